import { DiagramSheet } from '../canvas/diagram-sheet';
import { ComparePanel } from './compare/compare-panel';
import { Inspector } from './inspector/inspector';
import { Ledger } from './ledger';
import { Shelf } from './shelf/shelf';
import { StartCard } from './start-card';
import { Workspace } from './workspace';

/** Place connectors, draw wires. */
export function DiagramPage() {
  return (
    <Workspace
      shelf={<Shelf />}
      sheet={
        <>
          <DiagramSheet />
          <StartCard />
        </>
      }
      inspector={<Inspector />}
      ledger={<ComparePanel otherwise={<Ledger />} />}
    />
  );
}
