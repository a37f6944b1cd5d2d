import { renderToString } from 'preact-render-to-string';
import { demo } from '../src/batch/document/demo';
import { earlierKey, keptMark } from '../src/batch/keeping/storage';
import { createStore } from '../src/batch/store/store';
import { App } from '../src/ui/page/App';
import { media } from '../src/ui/page/use-media';

/** The page as a first visitor sees it, for a wide and for a narrow window; what comes after the first script is not in it. */
export const pictures = [write('wide', [media.wide]), write('narrow', [media.phone])].join('');

/** Marks the page, before anything is painted, as that of a cook who has a sheet of his own here. */
export const lookForOwn = `try{if(['${keptMark}','${earlierKey}'].some((key)=>localStorage.getItem(key)!==null))document.documentElement.dataset.own=''}catch{}`;

/**
 * The page in a window in which these media queries hold and no other. Nothing in it can be touched or is read out, as
 * all of it is replaced in a moment. Its ids and names would meet those of the other picture, and the policy lets no
 * style stand in the page.
 */
function write(window: string, holding: readonly string[]): string {
  Reflect.set(globalThis, 'matchMedia', (query: string) => ({ matches: holding.includes(query) }));
  const drawn = renderToString(<App store={createStore(demo)} storage={null} />);
  const plain = drawn.replaceAll(/ (id|name|style|for|aria-(controls|describedby|labelledby))="[^"]*"/g, '');
  return `<div class="first-paint ${window}" inert aria-hidden="true">${plain}</div>`;
}
