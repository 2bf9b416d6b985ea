import type {CitationClusterNode} from 'mdast';
import type {CompileContext, Token} from 'mdast-util-from-markdown';
import type {Processor} from 'unified';
import {citationSyntax} from '../citation-syntax.ts';

/** Citations become nodes in the tree. What stands in them is read later, when problems can be reported. */
export function remarkCitation(this: Processor): undefined {
  const data = this.data();
  data.micromarkExtensions = [...(data.micromarkExtensions ?? []), citationSyntax];
  data.fromMarkdownExtensions = [
    ...(data.fromMarkdownExtensions ?? []),
    {
      enter: {
        citationBracketed: enterCluster(false),
        citationInText: enterCluster(true),
        citationText: addPiece,
      },
      exit: {citationBracketed: exitCluster, citationInText: exitCluster},
    },
  ];
}

function enterCluster(inText: boolean) {
  return function (this: CompileContext, token: Token): undefined {
    const node: CitationClusterNode = {
      type: 'citationCluster',
      cluster: {citations: [], inText},
      index: -1,
      pieces: [],
    };
    this.enter(node, token);
  };
}

function addPiece(this: CompileContext, token: Token): undefined {
  const node = this.stack.at(-1);
  if (node?.type !== 'citationCluster') return;
  const {line, column} = token.start;
  node.pieces = [...node.pieces, {text: this.sliceSerialize(token), line, column}];
}

function exitCluster(this: CompileContext, token: Token): undefined {
  this.exit(token);
}
