/**
 * A read-only view of `model` for templates that throws on every name it does not have. Handlebars' own strict mode
 * lets a misspelt name in `{{#if}}`, `{{#each}}` and the argument of a partial pass as empty; this does not. What may
 * be absent is therefore present as null.
 */
export function sealView<T extends object>(model: T): T {
  return seal(model, new WeakMap());
}

function seal<T extends object>(model: T, sealed: WeakMap<object, object>): T {
  const known = sealed.get(model);
  // The map's value was made from this very key, so it has the key's type.
  if (known !== undefined) return known as T;
  const view = new Proxy(model, {
    get(target, name) {
      if (typeof name === 'symbol') return Reflect.get(target, name);
      if (!Object.hasOwn(target, name)) throw new TypeError(unknownName(target, name));
      const value: unknown = Reflect.get(target, name);
      if (value === undefined) throw new TypeError(`the view has \`${name}\` as undefined; absent is null`);
      return typeof value === 'object' && value !== null ? seal(value, sealed) : value;
    },
    set(_, name) {
      throw new TypeError(`a template may not set \`${String(name)}\``);
    },
  });
  sealed.set(model, view);
  return view;
}

function unknownName(target: object, name: string): string {
  const names = Array.isArray(target) ? `a list of ${target.length}` : Object.keys(target).join(', ');
  return `a template asks for \`${name}\`, but the view has only: ${names}`;
}
