import { FormboardSheet } from '../canvas/formboard-sheet';
import { Inspector } from './inspector/inspector';
import { Workspace } from './workspace';

/** Nodes, segments and lengths, at scale. */
export function FormboardPage() {
  return <Workspace sheet={<FormboardSheet />} inspector={<Inspector />} />;
}
