import type { ReactNode } from 'react';
import { Group, Panel, Separator } from 'react-resizable-panels';
import { ErrorBoundary } from '../app/error-boundary';
import { type PanelId, PANELS, panelPx, setPanelPx, togglePanel } from '../app/panel-sizes';
import { appStore, useApp } from '../app/store';
import './workspace.css';

/** Sizes as drawn. Only those that the user gave by hand are remembered: a small window squeezes panels, too. */
const lastPx = new Map<PanelId, number>();

const remember =
  (...ids: readonly PanelId[]) =>
  (_layout: unknown, { isUserInteraction }: { isUserInteraction: boolean }): void => {
    if (!isUserInteraction) return;
    for (const id of ids) {
      const px = lastPx.get(id);
      if (px !== undefined && panelPx(appStore.getState().view.panelSizesPx, id) > 0) setPanelPx(id, px);
    }
  };

const rememberSides = remember('shelf', 'inspector');
const rememberLedger = remember('ledger');

export interface WorkspaceProps {
  readonly sheet: ReactNode;
  readonly shelf?: ReactNode;
  readonly inspector?: ReactNode;
  readonly ledger?: ReactNode;
  /** What the ledger is called while it is put away. */
  readonly ledgerTitle?: string;
}

/** A sheet with panels around it that can be resized and put away. The sheet keeps at least half of both directions. */
export function Workspace({ sheet, shelf, inspector, ledger, ledgerTitle }: WorkspaceProps) {
  const sizes = useApp((s) => s.view.panelSizesPx);
  const open = (id: PanelId): boolean => panelPx(sizes, id) > 0;
  return (
    <div className="workspace">
      {shelf && !open('shelf') ? <Rail id="shelf" side="left" /> : null}
      <Group
        orientation="horizontal"
        className="workspace-group"
        onLayoutChanged={rememberSides}
        key={`${open('shelf')} ${open('inspector')}`}
      >
        {shelf && open('shelf') ? (
          <>
            <SidePanel id="shelf" px={panelPx(sizes, 'shelf')}>
              <ErrorBoundary what="The parts shelf">{shelf}</ErrorBoundary>
            </SidePanel>
            <Separator className="workspace-edge" />
          </>
        ) : null}
        <Panel id="middle" minSize="50%">
          <div className="column">
            <Group
              orientation="vertical"
              className="workspace-middle"
              onLayoutChanged={rememberLedger}
              key={String(open('ledger'))}
            >
              <Panel id="sheet" minSize="50%">
                <ErrorBoundary what="The sheet">{sheet}</ErrorBoundary>
              </Panel>
              {ledger && open('ledger') ? (
                <>
                  <Separator className="workspace-edge" />
                  <SidePanel id="ledger" px={panelPx(sizes, 'ledger')} min={96}>
                    <ErrorBoundary what="The table">{ledger}</ErrorBoundary>
                  </SidePanel>
                </>
              ) : null}
            </Group>
            {ledger && !open('ledger') ? <Rail id="ledger" side="bottom" title={ledgerTitle} /> : null}
          </div>
        </Panel>
        {inspector && open('inspector') ? (
          <>
            <Separator className="workspace-edge" />
            <SidePanel id="inspector" px={panelPx(sizes, 'inspector')}>
              <ErrorBoundary what="The inspector">{inspector}</ErrorBoundary>
            </SidePanel>
          </>
        ) : null}
      </Group>
      {inspector && !open('inspector') ? <Rail id="inspector" side="right" /> : null}
    </div>
  );
}

function SidePanel({
  id,
  px,
  min = 200,
  children,
}: {
  id: PanelId;
  px: number;
  min?: number;
  children: ReactNode;
}) {
  return (
    <Panel
      id={id}
      className="workspace-panel"
      defaultSize={px}
      minSize={min}
      maxSize="50%"
      collapsible
      collapsedSize={0}
      groupResizeBehavior="preserve-pixel-size"
      onResize={(size) => {
        lastPx.set(id, size.inPixels);
      }}
    >
      {children}
    </Panel>
  );
}

/** What stays of a panel that was put away. */
function Rail({
  id,
  side,
  title: given,
}: {
  id: PanelId;
  side: 'left' | 'right' | 'bottom';
  title?: string | undefined;
}) {
  const title = given ?? PANELS.find((p) => p.id === id)?.title ?? id;
  return (
    <button type="button" className="rail" data-side={side} onClick={() => togglePanel(id)}>
      <span>{title}</span>
    </button>
  );
}
