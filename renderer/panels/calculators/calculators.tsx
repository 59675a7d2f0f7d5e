import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { calculationById } from '@latchwork/core/calc/index';
import { must } from '@latchwork/core/base/assert-never';
import { X } from 'lucide-react';
import { openOverlay, useOverlay } from '../../app/overlays';
import { Button } from '../../ui/button';
import { CalcForm } from './calc-form';
import { CalcList } from './calc-list';
import './calculators.css';
import { useCalculators } from './calculators-store';

/** A single question without a project: choose, type, read the answer with its working. */
export function Calculators() {
  if (useOverlay() !== 'calculators') return null;
  return (
    <ModalOverlay
      className="dialog-back calculators-back"
      isOpen
      isDismissable
      onOpenChange={(open) => !open && openOverlay(null)}
    >
      <Modal className="dialog-box calculators-box">
        <Dialog className="dialog calculators">
          <header>
            <Heading slot="title" level={2}>
              Calculators
            </Heading>
            <Button look="icon" aria-label="Close" onClick={() => openOverlay(null)}>
              <X size={15} aria-hidden />
            </Button>
          </header>
          <div className="calculators-columns">
            <CalcList />
            <Question />
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

function Question() {
  const chosen = useCalculators((s) => s.chosen);
  return <CalcForm key={chosen} entry={must(calculationById(chosen), chosen)} />;
}
