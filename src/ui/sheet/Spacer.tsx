/** Room for the columns that are not drawn. */
export function Spacer({ width }: { readonly width: number }) {
  return width > 0 ? <td class="spacer" aria-hidden="true" style={{ minWidth: `${width}px` }} /> : null;
}
