import { X } from 'lucide-react';
import type { ReactNode } from 'react';
import { type PanelId, togglePanel } from '../app/panel-sizes';
import { Button } from '../ui/button';

/** Title of a panel, what belongs to it, and the way to put it away. */
export function PanelHead({ id, title, children }: { id: PanelId; title: string; children?: ReactNode }) {
  return (
    <div className="panel-head">
      <h2>{title}</h2>
      {children}
      <Button look="icon" aria-label={`Put away: ${title.toLowerCase()}`} onClick={() => togglePanel(id)}>
        <X size={14} aria-hidden />
      </Button>
    </div>
  );
}
