/** A formula as it is set: what the calculations write as text ("R = R20 x (234.5 + T)/254.5") in two dimensions. */
export type FormulaNode =
  | { readonly is: 'number'; readonly text: string }
  /** One letter, with what stands below it. */
  | { readonly is: 'symbol'; readonly text: string; readonly below?: string }
  | { readonly is: 'words'; readonly text: string }
  | { readonly is: 'operator'; readonly text: string }
  | { readonly is: 'row'; readonly items: readonly FormulaNode[] }
  | { readonly is: 'fraction'; readonly over: FormulaNode; readonly under: FormulaNode }
  | { readonly is: 'power'; readonly base: FormulaNode; readonly exponent: FormulaNode }
  | { readonly is: 'root'; readonly of: FormulaNode };

const TOKEN = /\s*(<=|-\/\+|\d+(?:\.\d+)?(?:-\d+)?|[A-Za-zµ][\w.]*(?:-[A-Za-z]\w*)*|[-+=/^(),|%])/y;

/** Letters whose 2 is an exponent; in every other name a digit is an index. */
const SQUARED: Readonly<Record<string, string>> = { I2: 'I', k2: 'k', S2: 'S' };

/** The statements of a formula. What cannot be read as mathematics is kept as words. */
export function formulaTree(text: string): readonly FormulaNode[] {
  return text.split(/;\s*/).map((statement) => {
    const label = /^([a-zA-Z ]+):\s*(.*)$/.exec(statement);
    if (!label) return treeOf(statement);
    return row([words(`${label[1]}: `), treeOf(label[2] as string)]);
  });
}

function treeOf(statement: string): FormulaNode {
  const tokens = tokensOf(statement);
  if (!tokens || !tokens.some((t) => /^(?:[-+=/^(|]|<=|-\/\+|x)$/.test(t))) return words(statement);
  const reader = new Reader(tokens);
  const tree = reader.sum();
  return tree && reader.done ? tree : words(statement);
}

function tokensOf(statement: string): readonly string[] | null {
  const tokens: string[] = [];
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < statement.length) {
    const m = TOKEN.exec(statement);
    if (!m) return null;
    tokens.push(m[1] as string);
  }
  return tokens;
}

const words = (text: string): FormulaNode => ({ is: 'words', text });
const operator = (text: string): FormulaNode => ({ is: 'operator', text });
const row = (items: readonly FormulaNode[]): FormulaNode =>
  items.length === 1 ? (items[0] as FormulaNode) : { is: 'row', items };

const isWord = (token: string | undefined): token is string =>
  token !== undefined && /^[A-Za-zµ]/.test(token);
const SIGNS: Readonly<Record<string, string>> = {
  '=': '=',
  '<=': '≤',
  '+': '+',
  '-': '−',
  '-/+': '∓',
  ',': ',',
};

/** Recursive descent; a method answers null where the text is no mathematics. */
class Reader {
  private at = 0;
  constructor(private readonly tokens: readonly string[]) {}

  get done(): boolean {
    return this.at === this.tokens.length;
  }
  private get next(): string | undefined {
    return this.tokens[this.at];
  }
  private take(token: string): boolean {
    if (this.next !== token) return false;
    this.at++;
    return true;
  }

  /** Terms with the signs between them, also = and commas: how they group does not change how they look. */
  sum(): FormulaNode | null {
    const items: FormulaNode[] = [];
    for (;;) {
      const sign = SIGNS[this.next ?? ''];
      if (sign !== undefined && (items.length > 0 || '+−∓'.includes(sign))) {
        items.push(operator(sign));
        this.at++;
      }
      const term = this.product();
      if (!term) return null;
      items.push(term);
      if (SIGNS[this.next ?? ''] === undefined) return row(items);
    }
  }

  /** Factors; a slash sets the factor before it over the one behind it. */
  private product(): FormulaNode | null {
    const items: FormulaNode[] = [];
    for (;;) {
      const factor = this.power();
      if (!factor) return null;
      items.push(factor);
      while (this.take('/')) {
        const under = this.power();
        if (!under) return null;
        items.push({ is: 'fraction', over: bare(items.pop() as FormulaNode), under: bare(under) });
      }
      if (this.next === 'x' && this.tokens[this.at + 1] !== undefined) {
        this.at++;
        items.push(operator('×'));
      } else if (!this.startsFactor()) return row(items);
    }
  }

  private startsFactor(): boolean {
    const t = this.next;
    return t !== undefined && (isWord(t) || /^[\d(%]/.test(t));
  }

  private power(): FormulaNode | null {
    const base = this.atom();
    if (!base || !this.take('^')) return base;
    const exponent = this.atom();
    return exponent && { is: 'power', base, exponent: bare(exponent) };
  }

  private atom(): FormulaNode | null {
    const t = this.next;
    if (t === undefined) return null;
    if (t === '(' || t === '|') return this.bracketed(t, t === '(' ? ')' : '|');
    if (/^\d/.test(t) || t === '%') {
      this.at++;
      return t === '%' ? words('%') : { is: 'number', text: t };
    }
    if (!isWord(t)) return null;
    this.at++;
    if (t === 'sqrt' && this.next === '(') {
      const of = this.bracketed('(', ')');
      return of && { is: 'root', of: bare(of) };
    }
    return this.name(t);
  }

  private bracketed(open: string, close: string): FormulaNode | null {
    if (!this.take(open)) return null;
    const inner = this.sum();
    if (!inner || !this.take(close)) return null;
    return { is: 'row', items: [operator(open), inner, operator(close)] };
  }

  /** Words up to the next sign are one name; a letter before them carries them as its index. */
  private name(first: string): FormulaNode | null {
    if (first === 'sum') {
      this.take('of');
      const of = this.power();
      return of && row([operator('∑'), of]);
    }
    const symbol = symbolOf(first);
    if (symbol && !(/^[A-Z]$/.test(first) && isWord(this.next) && this.next.length > 2)) return symbol;
    const names = symbol ? [] : [first];
    while (isWord(this.next) && this.next !== 'sqrt' && !(this.next === 'x' && this.tokens[this.at + 1]))
      names.push(this.tokens[this.at++] as string);
    const text = names.join(' ');
    return symbol ? { is: 'symbol', text: first, below: text } : words(text);
  }
}

function symbolOf(name: string): FormulaNode | null {
  if (name === 'pi') return { is: 'symbol', text: 'π' };
  if (name === 'I2t') return row([squared('I'), { is: 'symbol', text: 't' }]);
  const letter = SQUARED[name];
  if (letter) return squared(letter);
  if (name.length === 1) return { is: 'symbol', text: name };
  const indexed = /^([A-Z])(\d+|max|[a-z])$|^([a-z])(\d)$/.exec(name);
  if (!indexed) return null;
  const [, upper, below, lower, digit] = indexed;
  return { is: 'symbol', text: (upper ?? lower) as string, below: (below ?? digit) as string };
}

const squared = (letter: string): FormulaNode => ({
  is: 'power',
  base: { is: 'symbol', text: letter },
  exponent: { is: 'number', text: '2' },
});

/** Without its brackets, where a bar or a root already groups. */
function bare(node: FormulaNode): FormulaNode {
  if (node.is !== 'row' || node.items.length !== 3) return node;
  const [open, inner] = node.items as [FormulaNode, FormulaNode];
  return open.is === 'operator' && open.text === '(' ? inner : node;
}
