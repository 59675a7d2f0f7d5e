import { BOARD_KINDS } from '../canvas/formboard/board-kinds';
import { FormboardSheet } from '../canvas/formboard-sheet';
import { ComparePanel } from './compare/compare-panel';
import { Inspector } from './inspector/inspector';
import { LengthLedger } from './length-ledger';
import { Shelf } from './shelf/shelf';
import { Workspace } from './workspace';

/** Nodes, segments and lengths, at scale. */
export function FormboardPage() {
  return (
    <Workspace
      shelf={<Shelf kinds={BOARD_KINDS} />}
      sheet={<FormboardSheet />}
      inspector={<Inspector />}
      ledger={<ComparePanel otherwise={<LengthLedger />} />}
      ledgerTitle="Length table"
    />
  );
}
