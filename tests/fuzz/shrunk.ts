/** A shorter text that still fails: parts are taken out, ever smaller ones, as long as that helps. */
export async function shrunk(text: string, fails: (text: string) => Promise<boolean>): Promise<string> {
  let rest = text;
  for (let size = Math.ceil(text.length / 2); size >= 1; size = size === 1 ? 0 : Math.ceil(size / 2)) {
    for (let at = 0; at < rest.length; ) {
      const less = rest.slice(0, at) + rest.slice(at + size);
      if (await fails(less)) rest = less;
      else at += size;
    }
  }
  return rest;
}
