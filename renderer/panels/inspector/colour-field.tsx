import { Button as AriaButton, Dialog, DialogTrigger, Heading, Popover } from 'react-aria-components';
import {
  COLOUR_CODES,
  COLOUR_NAMES,
  type Colour,
  type ColourCode,
  colourText,
  sameColour,
} from '@latchwork/core/model/colour';
import { Button } from '../../ui/button';
import { ChoiceField } from '../../ui/choice-field';
import { ColourName, Swatch } from './swatch';

export interface ColourFieldProps {
  readonly colour: Colour | undefined;
  /** Colours in which the part can be ordered; undefined where that is not known. */
  readonly offered: readonly Colour[] | undefined;
  readonly choose: (colour: Colour | null) => void;
}

/** A wire's colour: base and stripes apart, with letter codes. */
export function ColourField({ colour, offered, choose }: ColourFieldProps) {
  return (
    <div className="field" data-field="colour">
      <span className="field-label">Colour</span>
      <DialogTrigger>
        <AriaButton className="part-button">
          <span className="visually-hidden">Colour: </span>
          <span>{colour ? <ColourName colour={colour} /> : <span className="second">none chosen</span>}</span>
          <span className="part-change">Change</span>
        </AriaButton>
        <Popover className="popover" placement="bottom end">
          <Dialog className="popover-body">
            {({ close }) => (
              <ColourChoice
                colour={colour}
                offered={offered}
                choose={(c) => {
                  choose(c);
                  close();
                }}
                change={choose}
              />
            )}
          </Dialog>
        </Popover>
      </DialogTrigger>
    </div>
  );
}

function ColourChoice({
  colour,
  offered,
  choose,
  change,
}: ColourFieldProps & { change: (colour: Colour) => void }) {
  const base = colour?.base ?? 'BK';
  const stripes = [
    { value: '', text: 'none' },
    ...COLOUR_CODES.filter((c) => c !== base).map((c) => ({ value: c, text: `${c} ${COLOUR_NAMES[c]}` })),
  ];
  const withStripe = (stripe: string): Colour =>
    stripe ? { base, stripes: [stripe as ColourCode] } : { base };
  return (
    <>
      <Heading slot="title" level={3}>
        Colour
      </Heading>
      {offered ? (
        <>
          <p className="second">Colours in which this wire can be ordered</p>
          <Patches colours={offered} chosen={colour} choose={choose} />
        </>
      ) : null}
      <p className="second">{offered ? 'Any other colour' : 'Base colour'}</p>
      <Patches
        colours={COLOUR_CODES.map((code) => ({ base: code }))}
        chosen={colour && { base: colour.base }}
        choose={choose}
      />
      <ChoiceField
        label="Stripe"
        value={colour?.stripes?.[0] ?? ''}
        choices={stripes}
        choose={(stripe) => change(withStripe(stripe))}
      />
      <div className="card-actions">
        <Button look="plain" onClick={() => choose(null)}>
          No colour
        </Button>
      </div>
    </>
  );
}

function Patches({
  colours,
  chosen,
  choose,
}: {
  colours: readonly Colour[];
  chosen: Colour | undefined;
  choose: (colour: Colour) => void;
}) {
  return (
    <div className="colour-grid">
      {colours.map((c) => (
        <button
          key={colourText(c)}
          type="button"
          aria-pressed={sameColour(c, chosen)}
          title={[c.base, ...(c.stripes ?? [])].map((code) => COLOUR_NAMES[code]).join(' with ')}
          onClick={() => choose(c)}
        >
          <Swatch colour={c} size={14} />
          <span className="mono">{colourText(c)}</span>
        </button>
      ))}
    </div>
  );
}
