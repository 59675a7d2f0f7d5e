import { Button } from './button';
import { DialogFrame, ask } from './dialogs';

export interface AskedChoice<T extends string> {
  readonly answer: T;
  readonly text: string;
  readonly primary?: boolean;
}

/** A question with buttons for answers. Null when it was closed without one. */
export const askChoice = <T extends string>(
  title: string,
  text: string,
  choices: readonly AskedChoice<T>[],
): Promise<T | null> =>
  ask<T>((done) => (
    <DialogFrame
      title={title}
      buttons={choices.map((c) => (
        <Button
          key={c.answer}
          look={c.primary ? 'primary' : 'outline'}
          autoFocus={c.primary}
          onClick={() => done(c.answer)}
        >
          {c.text}
        </Button>
      ))}
    >
      <p>{text}</p>
    </DialogFrame>
  ));
