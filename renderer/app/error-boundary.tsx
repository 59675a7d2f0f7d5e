import { Component, type ReactNode } from 'react';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { Button } from '../ui/button';
import { EmptyPlace } from '../ui/empty-place';
import { copyDiagnostics, reportError } from './diagnostics';
import { save } from './files/save';
import { appStore } from './store';

interface Props {
  readonly what: string;
  readonly children: ReactNode;
}

/** Keeps the work when a part of the window fails: the project is not in what is drawn. */
export class ErrorBoundary extends Component<Props, { readonly error: Error | null }> {
  override state: { readonly error: Error | null } = { error: null };

  static getDerivedStateFromError(error: unknown): { error: Error } {
    return { error: error instanceof Error ? error : new Error(String(error)) };
  }

  override componentDidCatch(error: Error): void {
    reportError(error);
  }

  override render(): ReactNode {
    const { error } = this.state;
    if (!error) return this.props.children;
    return (
      <EmptyPlace
        title={`${this.props.what} stopped working`}
        action={
          <div className="input-row">
            <Button look="primary" onClick={() => void save()}>
              Save the project
            </Button>
            <Button
              onClick={() =>
                void navigator.clipboard.writeText(serialiseProject(appStore.getState().history.project))
              }
            >
              Copy it as text
            </Button>
            <Button onClick={() => void copyDiagnostics()}>Copy diagnostics</Button>
            <Button onClick={() => this.setState({ error: null })}>Try again</Button>
          </div>
        }
      >
        <p>
          This is a mistake in the program. Your project is complete and unharmed; it was backed up and can be
          saved now.
        </p>
        <p className="mono">{error.message}</p>
      </EmptyPlace>
    );
  }
}
