/** Files that editors, offices and systems leave lying about; exact names in lower case. */
const litter = new Set(['4913', 'thumbs.db', 'desktop.ini', 'icon\r']);

/** Whether a file or folder of this name is no part of a binder: hidden, a swap file or a backup of an editor, a lock of an office. */
export function isPassedOver(name: string): boolean {
  return (
    name.startsWith('.') ||
    name.startsWith('~$') ||
    name.endsWith('~') ||
    (name.startsWith('#') && name.endsWith('#')) ||
    /\.(swp|swo|swx|tmp)$/i.test(name) ||
    litter.has(name.toLowerCase())
  );
}
