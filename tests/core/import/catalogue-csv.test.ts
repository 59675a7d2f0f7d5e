import { describe, expect, it, test } from 'vitest';
import { importCatalogueCsv } from '@latchwork/core/import/catalogue-csv';
import { importProblemText } from '@latchwork/core/import/import-problem';

const imported = (text: string) => importCatalogueCsv('bench.csv', text);
const partsOf = (text: string) => {
  const result = imported(text);
  if (!result.ok) throw new Error(result.problem.map(importProblemText).join('\n'));
  return result.value.catalogue.parts;
};
const problemsOf = (text: string) => {
  const result = imported(text);
  return result.ok ? [] : result.problem.map(importProblemText);
};

describe('a catalogue CSV becomes records', () => {
  it('reads a housing', () => {
    const [part] = partsOf(
      'kind,maker,part,description,lifecycle,interface,body_form,contact_kind,mounting,ways,rows,pitch_mm,numbering,cavity_1_corner,keying,series,current_a,voltage_v,temp_max_c,wire_od_max_mm,datum_mm,panel_min_mm,panel_max_mm\n' +
        'housing,Acre,H1,Housing,active,I3,plug,pin,panel,6,2,3,zig-zag,top-left,A,S1 S2,5,250,105,1.8,-4,1,2.5',
    );
    expect(part).toEqual({
      kind: 'housing',
      id: expect.stringMatching(/^[0-9a-f-]{36}$/),
      maker: 'Acre',
      partNumber: 'H1',
      description: 'Housing',
      catalogue: { name: 'bench', revision: expect.stringMatching(/^[0-9a-f]{8}$/) },
      lifecycle: 'active',
      temperatureMaxC: 105,
      interface: 'I3',
      bodyForm: 'plug',
      contactKind: 'pin',
      mounting: 'panel',
      ways: 6,
      rows: 2,
      pitchMm: 3,
      numbering: 'zig-zag',
      cavityOneCorner: 'top-left',
      keying: 'A',
      acceptedSeries: ['S1', 'S2'],
      currentRatings: [{ currentA: 5 }],
      voltageMaxV: 250,
      wireOdMaxMm: 1.8,
      datumMm: -4,
      panel: { thicknessMinMm: 1, thicknessMaxMm: 2.5 },
    });
  });

  it('reads a header', () => {
    const [part] = partsOf(
      'kind;maker;part;ways;finish;termination;orientation;tail_mm;standoff_mm;board_min_mm;board_max_mm;processes;reflow_peak_c\n' +
        'header;Acre;B1;4;gold;through-hole;right-angle;3,2;0;1;2;wave reflow;260',
    );
    expect(part).toMatchObject({ kind: 'header', ways: 4, finish: 'gold', termination: 'through-hole', orientation: 'right-angle', tailLengthMm: 3.2, standOffMm: 0, boardThicknessMinMm: 1, boardThicknessMaxMm: 2, processes: ['wave', 'reflow'], reflowPeakMaxC: 260 }); // prettier-ignore
  });

  it('reads a contact and a wire', () => {
    const [contact, wire] = partsOf(
      'KIND,Maker,PART,series,contact_kind,size_min,size_max,od_min_mm,od_max_mm,strip_mm,strip_tol_mm,finish,current_a,resistance_mohm,cycles,stranded_only,form,pack,tool,size,area_mm2,stranding,od_mm,resistance_ohm_km,colours,style\n' +
        'contact,Acre,C1,S1,socket,24 AWG,20 AWG,0.89,1.53,2.5,0.3,tin,5,10,30,yes,strip,4000,T9,,,,,,,\n' +
        'wire,Acre,W1,,,,,,,,,,,,,,,,,22 AWG,0.355,7x0.254,1.2,53,RD BK/WH,UV1',
    );
    expect(contact).toMatchObject({ kind: 'contact', series: 'S1', contactKind: 'socket', sizeMin: { gauge: 24 }, sizeMax: { gauge: 20 }, insulationMinMm: 0.89, insulationMaxMm: 1.53, stripLengthMm: 2.5, stripToleranceMm: 0.3, finish: 'tin', currentMaxA: 5, resistanceMohm: 10, cycles: 30, strandedOnly: true, form: 'strip', pack: 4000, tools: ['T9'] }); // prettier-ignore
    expect(wire).toMatchObject({ kind: 'wire', size: { system: 'awg', gauge: 22 }, areaMm2: 0.355, stranding: { strands: 7, strandDiameterMm: 0.254 }, odMm: 1.2, resistanceOhmPerKm: 53, colours: [{ base: 'RD' }, { base: 'BK', stripes: ['WH'] }], style: 'UV1' }); // prettier-ignore
  });

  it('reads an offer; the price holds from the minimum on', () => {
    const [part] = partsOf(
      'kind,maker,part,supplier,price,currency,moq,multiple,lead_days,replaced_by,mass_g\ntie,Acre,T1,Depot,0.05,eur,100,50,14,T2,0.4',
    );
    expect(part).toMatchObject({
      replacedBy: 'T2',
      massG: 0.4,
      offers: [{ supplier: 'Depot', currency: 'EUR', minimum: 100, multiple: 50, leadTimeDays: 14, priceBreaks: [{ quantity: 100, price: 0.05 }] }],
    }); // prettier-ignore
  });

  it('takes an empty cell for not known', () => {
    const [part] = partsOf('kind,maker,part,rows,keying,ways\nhousing,Acre,H1,,,3');
    expect(Object.keys(part!).sort()).toEqual(['catalogue', 'description', 'id', 'kind', 'maker', 'partNumber', 'ways']); // prettier-ignore
  });

  it('gives a part the same id whatever else stands in the table, and a changed table another revision', () => {
    const [a] = partsOf('kind,maker,part\ntie,Acre,T1');
    const [, b] = partsOf('part,kind,maker\nT0,tie,Acre\nT1,tie,Acre');
    expect(b!.id).toBe(a!.id);
    expect(b!.catalogue?.revision).not.toBe(a!.catalogue?.revision);
  });

  it('leaves out what only the other half has, and says so', () => {
    const result = imported('kind,maker,part,ways,series,tail_mm\nheader,Acre,B1,3,S1,3.2');
    expect(result.ok && result.value.leftOut.map(importProblemText)).toEqual([
      'bench.csv, line 2, column 5 (series): a header has no series; not kept',
    ]);
  });
});

describe('a catalogue CSV is refused with line, column and field', () => {
  test.each([
    ['kind,maker,part,colour\ntie,A,T,RD', 'line 1, column 4 (colour): there is no column "colour"'],
    ['kind,maker\ntie,A', 'line 1, column 1 (part): the column "part" is missing'],
    ['kind,maker,part,kind\ntie,A,T,tie', 'line 1, column 4 (kind): the column "kind" stands here twice'],
    ['kind,maker,part\nsprocket,A,T', 'line 2, column 1 (kind): "sprocket" is none of'],
    ['kind,maker,part\ntie,,T', 'line 2, column 2 (maker): must be given'],
    ['kind,maker,part\ntie,A', 'line 2, column 2 (maker): the row has 2 cells, the header 3'],
    ['kind,maker,part\ntie,A,T,x', 'line 2, column 4: the row has 4 cells, the header 3'],
    ['kind,maker,part\ntie,A,T\n\ntie,A,T', 'line 4, column 3 (part): T of A stands in line 2 already'],
    ['kind,maker,part,ways\nhousing,A,H,', 'line 2, column 4 (ways): must be given for a housing or header'],
    ['kind,maker,part,ways,rows\nhousing,A,H,2,3', 'line 2, column 5 (rows): 3 rows cannot hold 2 ways'],
    ['kind,maker,part,strip_mm,size\nwire,A,W,3,22 AWG', 'line 2, column 4 (strip_mm): a wire has no strip_mm'],
    ['kind,maker,part\nwire,A,W', 'line 2, column 1 (size): must be given for a wire'],
    ['kind,maker,part,size\nwire,A,W,22', 'line 2, column 4 (size): "22" is not a wire size'],
    ['kind,maker,part,size_min,size_max\ncontact,A,C,20 AWG,24 AWG', 'line 2, column 4 (size_min): size_min is the thinner wire'],
    ['kind,maker,part,size_min,size_max\ncontact,A,C,20 AWG,0.5 mm2', 'line 2, column 5 (size_max): size_min and size_max must be of one system'],
    ['kind,maker,part,od_min_mm,od_max_mm\ncontact,A,C,2,1', 'line 2, column 4 (od_min_mm): 2 is above od_max_mm 1'],
    ['kind,maker,part,price\ntie,A,T,1', 'line 2, column 4 (price): belongs to a supplier'],
    ['kind,maker,part,supplier,price\ntie,A,T,D,1', 'line 2, column 4 (supplier): an offer needs its currency'],
    ['kind,maker,part\ncable,A,C', 'line 2, column 1 (kind): a cable needs its cores'],
    ['kind,maker,part,form\ncovering,A,C,', 'line 2, column 4 (form): must be given for a covering'],
    ['kind,maker,part,form\ncontact,A,C,tape', 'line 2, column 4 (form): a contact comes in strip or loose form'],
    ['kind,maker,part,\ntie,A,T,x', 'line 1, column 4: the column has values but no name'],
    ['kind,maker,part\ntie,A,"T', 'line 2, column 3: the opening quote is never closed'],
    ['', 'line 1, column 1: the file is empty'],
  ])('%j', (text, message) => {
    const problems = problemsOf(text);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain(`bench.csv, ${message}`);
  }); // prettier-ignore

  it('tells all problems at once', () => {
    expect(problemsOf('kind,maker,part,ways,pitch_mm\nhousing,A,H,x,y\nhousing,,H,2,-1')).toHaveLength(4);
  });
});
