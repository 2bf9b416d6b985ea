/**
 * Shows `look` the node and every node below it, parents before their children. For walks over every item: the usual
 * library makes and names a function for every node, which was most of the cost of such a walk.
 */
export function eachNode<Node extends {readonly type: string}>(
  node: Node,
  look: (node: Node, parent: Node | null) => void,
  parent: Node | null = null,
): void {
  look(node, parent);
  if (!('children' in node)) return;
  // A tree's nodes have nodes of the tree for children.
  for (const child of node.children as readonly Node[]) eachNode(child, look, node);
}
