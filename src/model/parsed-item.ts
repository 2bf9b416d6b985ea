import type {Finding} from '../diagnostics/finding.ts';
import type {YamlDocument} from '../yaml/read-yaml.ts';
import type {Body} from './body.ts';

/** A Markdown file taken apart, before anyone knows which requirement it answers. */
export interface ParsedItem {
  readonly file: string;
  /** The file without its byte order mark and with lines that end in `\n`: what lines and columns count in. */
  readonly text: string;
  readonly yaml: YamlDocument;
  readonly body: Body;
  readonly findings: readonly Finding[];
}
