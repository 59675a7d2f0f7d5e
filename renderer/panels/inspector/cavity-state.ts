import type { CavityState, CavityUse } from '@latchwork/core/derive/harness';
import { contactKindFit, contactSeriesFit } from '@latchwork/core/derive/contact-fit';
import type { Part } from '@latchwork/core/model/parts/part';
import { appStore } from '../../app/store';
import type { Choice } from '../../ui/choice-field';
import { say } from '../../ui/toasts';
import { askPart } from '../part-picker';

const NAMES: Readonly<Record<Exclude<CavityState, 'wired'>, string>> = {
  undeclared: 'not stated',
  empty: 'empty by intent',
  plugged: 'plug',
  'spare-contact': 'spare contact',
  blocked: 'blocked',
};

/** States that an unwired cavity may be given. */
export const stateChoices = (_cavity: CavityUse): readonly Choice<string>[] =>
  Object.entries(NAMES).map(([value, text]) => ({ value, text }));

export const stateName = (state: CavityState): string => (state === 'wired' ? 'wired' : NAMES[state]);

/** Declares what a cavity is meant to be; asks for the part where the state has one and it is not clear which. */
export async function setCavityState(cavity: CavityUse, state: string): Promise<void> {
  const { dispatch, catalogue, history } = appStore.getState();
  const args = { connector: cavity.connector.connector.id, cavities: [cavity.cavity] };
  if (state === 'undeclared')
    return void dispatch({ id: 'cavity.set-state', args: { ...args, state: null } });
  const all = [
    ...history.project.parts,
    ...catalogue.filter((p) => !history.project.parts.some((o) => o.id === p.id)),
  ];
  const part =
    state === 'plugged'
      ? plugFor(cavity, all)
      : state === 'spare-contact'
        ? await spareFor(cavity, all)
        : undefined;
  if (part === null) return;
  dispatch({ id: 'cavity.set-state', args: { ...args, state: state as 'empty', ...(part ? { part } : {}) } });
}

/** The plug that the housing's record names. Without one the state is set all the same, and is a finding. */
function plugFor(cavity: CavityUse, parts: readonly Part[]): Part | undefined {
  const housing = cavity.connector.part;
  const named = housing?.kind === 'housing' ? housing.cavityPlug : undefined;
  const plug = parts.find(
    (p) => p.kind === 'cavity-plug' && p.partNumber === named && p.maker === housing?.maker,
  );
  if (!plug)
    say(
      'plain',
      named
        ? `The plug ${named} is in no catalogue here; the cavity is stated as plugged without a part.`
        : 'The housing names no cavity plug; the cavity is stated as plugged without a part.',
    );
  return plug;
}

async function spareFor(cavity: CavityUse, parts: readonly Part[]): Promise<Part | null> {
  const housing = cavity.connector.part;
  const contacts = parts.filter((p) => p.kind === 'contact');
  const answer = await askPart({
    title: `Spare contact in ${cavity.connector.connector.designator}:${cavity.cavity}`,
    parts: contacts,
    judge: (contact) => {
      const fits =
        housing?.kind === 'housing' &&
        contactKindFit(housing, contact).verdict === 'fits' &&
        contactSeriesFit(housing, contact).verdict === 'fits';
      return fits
        ? { group: 'Latches in this housing', rank: 0 }
        : { group: 'Does not, or not known', rank: 1 };
    },
  });
  return answer?.part ?? null;
}
