import { type ExternalAnswer } from '@latchwork/core/bridge/answers';

/** Asks the user for a place; null when the user changed their mind. */
export interface Dialogs {
  openProject(): Promise<string | null>;
  saveProject(suggestedName: string): Promise<string | null>;
  saveExport(
    suggestedName: string,
    filters: readonly { name: string; extensions: string[] }[],
  ): Promise<string | null>;
  openCatalogue(): Promise<string | null>;
  /** A folder to put files into. */
  chooseFolder(): Promise<string | null>;
}

/** What differs between the hosts. Everything else is the same services. */
export interface Shell {
  readonly host: 'electron' | 'browser';
  readonly version: string;
  readonly dialogs: Dialogs | null;
  readonly openExternal: (url: string) => Promise<ExternalAnswer>;
  /** What the window shows first. */
  readonly initial: { readonly path: string } | { readonly demo: string } | null;
}

/** Only ordinary web addresses leave the program. */
export function isWebAddress(text: string): boolean {
  if (!URL.canParse(text)) return false;
  const { protocol, username, password } = new URL(text);
  return (protocol === 'https:' || protocol === 'http:') && username === '' && password === '';
}
