import { options } from 'preact';

// Preact tells here of each component that it is about to draw; the name of the place is the one of its built files.
const place = '__r';
const before: unknown = Reflect.get(options, place);

/** How often each component has been drawn, by its name. */
const drawn: Record<string, number> = {};
Object.assign(globalThis, { drawn });

Reflect.set(options, place, (vnode: { readonly type: { readonly name: string } }) => {
  drawn[vnode.type.name] = (drawn[vnode.type.name] ?? 0) + 1;
  if (typeof before === 'function') before(vnode);
});
