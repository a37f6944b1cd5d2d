/** Room for the columns that are not drawn; always there, so that those that are drawn keep their place in the line. */
export function Spacer() {
  return <div class="spacer" role="presentation" />;
}
