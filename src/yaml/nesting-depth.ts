import type {CST} from 'yaml';

/** How many lists and maps stand inside each other at most. Walks without recursion, so any depth is safe. */
export function nestingDepth(tokens: readonly CST.Token[]): number {
  let deepest = 0;
  const open: {readonly token: CST.Token; readonly depth: number}[] = tokens.map((token) => ({
    token,
    depth: 0,
  }));
  for (let next = open.pop(); next; next = open.pop()) {
    const {token, depth} = next;
    if (token.type === 'document' && token.value) open.push({token: token.value, depth});
    if (!('items' in token)) continue;
    deepest = Math.max(deepest, depth + 1);
    for (const {key, value} of token.items) {
      if (key) open.push({token: key, depth: depth + 1});
      if (value) open.push({token: value, depth: depth + 1});
    }
  }
  return deepest;
}
