import { type ReactNode, useId } from 'react';
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { createStore, useStore } from 'zustand';

interface OpenDialog {
  readonly id: number;
  readonly content: (done: (answer: unknown) => void) => ReactNode;
  readonly done: (answer: unknown) => void;
  readonly wide: boolean;
}

/** The dialogs that are open, the topmost last. */
export const dialogStore = createStore<{ readonly open: readonly OpenDialog[] }>()(() => ({ open: [] }));

let count = 0;

/** Shows a dialog and waits for its answer; null when it was closed without one. */
export function ask<T>(
  content: (done: (answer: T | null) => void) => ReactNode,
  { wide = false }: { wide?: boolean } = {},
): Promise<T | null> {
  return new Promise((resolve) => {
    const id = ++count;
    const done = (answer: unknown): void => {
      dialogStore.setState((s) => ({ open: s.open.filter((d) => d.id !== id) }));
      resolve(answer as T | null);
    };
    const dialog = { id, done, wide, content: content as OpenDialog['content'] };
    dialogStore.setState((s) => ({ open: [...s.open, dialog] }));
  });
}

/** Draws the open dialogs; stands once in the frame. */
export function DialogHost() {
  const open = useStore(dialogStore, (s) => s.open);
  return open.map((d) => (
    <ModalOverlay
      key={d.id}
      className="dialog-back"
      isOpen
      isDismissable
      onOpenChange={(isOpen) => {
        if (!isOpen) d.done(null);
      }}
    >
      <Modal className="dialog-box" data-wide={d.wide ? '' : undefined}>
        {d.content(d.done)}
      </Modal>
    </ModalOverlay>
  ));
}

/** Heading, body and buttons of a dialog. */
export function DialogFrame({
  title,
  children,
  buttons,
}: {
  title: string;
  children: ReactNode;
  buttons?: ReactNode;
}) {
  const body = useId();
  return (
    <Dialog className="dialog" aria-describedby={body}>
      <header>
        <Heading slot="title" level={2}>
          {title}
        </Heading>
      </header>
      <div className="dialog-body" id={body}>
        {children}
      </div>
      {buttons ? <footer>{buttons}</footer> : null}
    </Dialog>
  );
}
