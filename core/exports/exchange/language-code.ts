/**
 * The code of a language as both formats write it ("De"), from the text of the title block ("de", "de-AT", "DE"). English
 * where none is given: the formats have no code for an unknown language.
 */
export function languageCode(language: string | undefined): string {
  const code = (language ?? '').trim().slice(0, 2).toLowerCase();
  const written = code.slice(0, 1).toUpperCase() + code.slice(1);
  return CODES.has(written) ? written : 'En';
}

/** Literals of the schema: ISO 639-1 as it stood when the list was made. */
const CODES: ReadonlySet<string> = new Set(
  (
    'Aa Ab Af Am Ar As Ay Az Ba Be Bg Bh Bi Bn Bo Br Ca Co Cs Cy Da De Dz El En Eo Es Et Eu Fa Fi Fj Fo Fr Fy Ga Gd Gl Gn ' +
    'Gu Ha Hi He Hr Hu Hy Ia Id Ie Ik In Is It Iu Iw Ja Ji Jw Ka Kk Kl Km Kn Ko Ks Ku Ky La Ln Lo Lt Lv Mg Mi Mk Ml Mn ' +
    'Mo Mr Ms Mt My Na Ne Nl No Oc Om Or Pa Pl Ps Pt Qu Rm Rn Ro Ru Rw Sa Sd Sg Sh Si Sk Sl Sm Sn So Sq Sr Ss St Su Sv ' +
    'Sw Ta Te Tg Th Tk Tl Tn To Tr Ts Tt Tw Ug Uk Ur Uz Vi Vo Wo Xh Yi Yo Za Zh Zu'
  ).split(' '),
);
