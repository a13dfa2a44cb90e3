// A board on an empty page, with a heat made up here and a clock that stands: every phase can be looked at without playing a heat.
// Called with { lanes, names, athletes, mixed, options, kind, overlay }: options as in the board's address, among them side and edge; kind: 'most' for work without an
// end, 'clock' for rounds by the clock, else for time; overlay: 'third' or 'full' for a video mix. Leaves window.stage.
async ({ lanes, names, athletes, mixed, options, kind, overlay }) => {
  const NOW = Date.UTC(2026, 10, 25, 14, 0), ROUNDS = 8, CAP_MS = 720_000, GO = NOW - 400_000;
  document.documentElement.dataset.ground = 'dark';
  const style = address => new Promise(done => document.head.append(Object.assign(document.createElement('link'), { rel: 'stylesheet', href: address, onload: done })));
  await Promise.all(['/floor/floor.css', '/floor/board/board.css', '/floor/board/between.css', overlay ? '/floor/overlay/overlay.css' : '/floor/board/side.css'].map(style));
  document.body.innerHTML = '<main id="board"></main>';
  await Promise.all(['500 40px Floor', '700 40px Floor', '500 40px Floor', '700 40px Floor'].map((font, i) => document.fonts.load(font, i < 2 ? 'A' : 'ł')));
  const [{ Board }, { seatOf }, { takeEdge }] = await Promise.all([import('/floor/board/screen.js'), import('/floor/board/sight.js'), import('/floor/edge.js')]);
  const asked = new URLSearchParams(options);
  takeEdge(asked);

  const steps = [];
  const step = more => steps.push({ step: steps.length + 1, kind: 'set', round: 1, leg: 1, athlete: 1, to: null, movement: '', movementId: null, quantity: 0, unit: 'reps', worth: 0, increment: 1, expectedMs: 0, earliestMs: 0, label: '', faults: [], ...more });
  for (let round = 1; round <= ROUNDS; round++) {
    const athlete = ((round - 1) % 4) + 1, to = (round % 4) + 1;
    step({ round, leg: round, athlete, movement: 'wall balls', quantity: 18, worth: 18, expectedMs: 40_000, label: '18 wall balls' });
    step({ round, leg: round, athlete, movement: 'row', quantity: 14, unit: 'cal', worth: 14, expectedMs: 44_000, label: '14 cal row' });
    if (round < ROUNDS && kind !== 'clock') step({ kind: 'tag', round, leg: round, athlete, to, expectedMs: 2_000, label: 'tag' });
  }
  if (kind === 'time') step({ kind: 'finish', round: ROUNDS, leg: ROUNDS, athlete: 4, expectedMs: 4_000, label: 'finish line' });

  const windows = kind === 'clock' ? Array.from({ length: ROUNDS }, (_, nth) => ({ first: 2 * nth + 1, last: 2 * nth + 2, fromMs: nth * 90_000, untilMs: nth * 90_000 + 75_000 })) : null;

  const groupOf = lane => (mixed && lane > lanes / 2 ? 'masters' : 'open');
  const sheet = {
    heat: 'h1', sheet: 1, epoch: 'e1', competition: 'Breakwater Relays', title: 'Heat 12', workout: { name: 'Low Tide', summary: '8 rounds, one each in turn' }, counting: 'sets', checkpointEvery: 1, capMs: CAP_MS, movements: [],
    lanes: Array.from({ length: lanes }, (_, at) => ({
      lane: at + 1, team: `t${at + 1}`, name: names[at % names.length], division: groupOf(at + 1), divisionName: groupOf(at + 1) === 'open' ? 'Open' : 'Masters 45+', group: groupOf(at + 1),
      athletes: Array.from({ length: 4 }, (_, nth) => athletes[(at + nth) % athletes.length]), colour: at % 6, capMs: CAP_MS + (groupOf(at + 1) === 'open' ? 0 : 60_000), plan: 1, steps, expectedSteps: kind === 'most' ? steps.length : null, ...(windows && { windows }),
    })),
  };
  const laneAt = (lane, more) => ({ lane, status: 'working', open: 1, count: null, sinceMs: null, worth: 0, place: 1, tied: false, gapMs: null, gapWorth: null, finishMs: null, officialMs: null, paceMs: null, ready: true, heldAt: null, creditMs: 0, ...more });
  const placeOf = lane => { const inGroup = sheet.lanes.filter(other => other.group === groupOf(lane)).map(other => other.lane); return { place: ((inGroup.indexOf(lane) + 2) % inGroup.length) + 1 }; };
  const running = lane => {
    const { place } = placeOf(lane), open = Math.max(1, steps.length - 6 - place);
    if (lane === lanes && lanes > 4) return laneAt(lane, { status: 'held', open, sinceMs: 330_000, worth: open * 10, heldAt: NOW - 9_000, gapMs: 64_000, place });
    if (kind === 'clock') return laneAt(lane, { open: 8 + (lane % 2), sinceMs: 338_000, worth: 120 - place * 3, place, gapWorth: place === 1 ? 0 : place * 3 - 3 });
    if (kind === 'most') return laneAt(lane, { open, sinceMs: 380_000, worth: 140 - place * 4, place, gapMs: place * 900, gapWorth: place * 4 - 4, roundsAndReps: { rounds: 4 - (place > 3), reps: place > 3 ? 40 - place * 2 : 12 - place * 4 } });
    return laneAt(lane, { open, sinceMs: 380_000, worth: open * 10, place, gapMs: place === 1 ? null : place * 7_700, paceMs: 1_000 });
  };
  const result = lane => {
    const { place } = placeOf(lane);
    if (kind === 'most') return { ...running(lane), status: 'capped' };
    if (place > 2 && lane === lanes) return laneAt(lane, { status: 'stopped', open: 9, worth: 96, place });
    return place % 3 ? laneAt(lane, { status: 'finished', open: steps.length + 1, finishMs: 600_000 + place * 4_350, officialMs: 600_000 + place * 4_300, worth: 256, place }) : laneAt(lane, { status: 'capped', open: 20, worth: 214 - place, place });
  };
  const frame = (phase, of, more = {}) => ({ heat: 'h1', sheet: 1, epoch: 'e1', sequence: 5, phase, start: null, haltedAt: null, haltedMs: 0, endedAt: null, capMs: CAP_MS, revision: 1, lanes: sheet.lanes.map(({ lane }) => of(lane)), ...more });
  const started = goAt => ({ start: { id: 's1', goAt, observed: false } });
  const waiting = lane => laneAt(lane, { status: 'ready', ready: lane % 3 > 0 });
  const all = lane => laneAt(lane, { status: 'ready' });
  const program = {
    competition: sheet.competition, epoch: 'e1', current: 'h1', serverNow: NOW,
    heats: [12, 13, 14, 15, 16].map((number, at) => number === 12 ? { heat: 'h1', number, title: 'Heat 12', workout: 'Low Tide', plannedAt: NOW + 5 * 60_000, phase: 'ended', lanes: [] } : ({ heat: `h${number}`, number, title: `Heat ${number}`, workout: 'Low Tide', plannedAt: NOW + (at * 20 - 8) * 60_000, phase: 'planned', lanes: sheet.lanes.map(({ lane, name, division }) => ({ lane, name, division })) })),
  };
  const table = {
    divisions: [['open', 'Open', false], ['masters', 'Masters 45+', true]].map(([division, name, provisional]) => ({
      division, name, provisional, workouts: [], lines: sheet.lanes.map((lane, at) => ({ place: at + 1, tied: at === 2, team: lane.team, name: lane.name, total: 3 + at * 2.5, scores: [] })),
    })),
  };

  const scenes = {
    idle: () => null,
    before: () => frame('called', waiting),
    ready: () => frame('armed', all),
    'count-down': () => frame('counting-down', all, started(NOW + 42_000)),
    'three': () => frame('counting-down', all, started(NOW + 2_400)),
    go: () => frame('running', all, started(NOW - 500)),
    running: () => frame('running', running, started(GO)),
    ...(kind === 'clock' && { rest: () => frame('running', running, started(NOW - 348_000)), 'next round': () => frame('running', running, started(NOW - 361_000)) }),
    'last minute': () => frame('running', running, started(NOW - CAP_MS + 42_000)),
    'cap reached': () => frame('running', running, started(NOW - CAP_MS - 90_000)),
    halted: () => frame('halted', running, { ...started(GO), haltedAt: NOW - 4_000 }),
    old: () => frame('running', running, started(GO)),
    'not live': () => frame('running', running, started(GO)),
    result: () => frame('ended', result, { ...started(NOW - 700_000), endedAt: NOW - 5_000 }),
    certified: () => frame('certified', result, { ...started(NOW - 700_000), endedAt: NOW - 5_000, revision: 2 }),
    message: () => frame('ended', result, { ...started(NOW - 700_000), endedAt: NOW - 5_000 }),
    programme: () => frame('ended', result, { ...started(NOW - 700_000), endedAt: NOW - 5_000 }),
    standings: () => frame('certified', result, { ...started(NOW - 700_000), endedAt: NOW - 5_000 }),
  };
  const AGES = { old: 5_000, 'not live': 42_000 };
  let board = null, age = 0, time = () => NOW;
  const breathe = () => { if (board) board.frameAt = performance.now() - age; requestAnimationFrame(breathe); };
  breathe();
  const pictures = async count => { for (let nth = 0; nth < count; nth++) await new Promise(drawn => requestAnimationFrame(drawn)); };

  /** Shows a scene on a board of its own, at once as it would stand after a while. */
  const show = async name => {
    const old = document.getElementById('board');
    const main = Object.assign(document.createElement('main'), { id: 'board' });
    if (overlay) main.dataset.overlay = overlay;
    if (asked.has('side')) main.dataset.side = asked.get('side');
    for (const row of board?.lanes.rows.values() ?? []) row.dispose();
    old.replaceWith(main);
    age = AGES[name] ?? 0;
    const told = { ...program, ...(name === 'message' ? { message: { text: 'Lunch until half past one. The floor is closed for the judges’ briefing.', until: NOW + 3_600_000 } } : {}) };
    const given = scenes[name]();
    board = new Board(main, { program: told, sheet: given ? sheet : null, frame: given }, { now: () => time() }, { seat: seatOf(asked), between: overlay ? null : { briefing: false } });
    board.frameAt = performance.now() - age;
    if (board.between) Object.assign(board.between.standings, { readAt: Infinity, table: name === 'standings' ? table : null });
    await pictures(3);
    const turn = { programme: 1_000, standings: 21_000 }[name];
    if (turn && board.between) board.between.since -= 20_000 * Math.max(1, board.lanes.plan.pages / 2) + turn;
    board.lookedAt = -Infinity;
    await pictures(3);
    return main.dataset.shows;
  };
  /** Lets the heat run for so long, ten frames a second, every lane at its own pace; tells when each picture was drawn. */
  const play = async ms => {
    await show('running');
    for (let nth = 0; nth < 240 && document.querySelector('.lane:not([hidden]) canvas.strip-tape'); nth++) await pictures(1);      // until all tape is a still image
    const begun = performance.now(), drawn = [];
    time = () => NOW + performance.now() - begun;
    const paces = new Map(sheet.lanes.map(({ lane }) => [lane, { step: running(lane).open, next: 300 + (lane * 977) % 4_000 }]));
    const lively = lane => {
      const state = paces.get(lane), at = performance.now() - begun;
      while (state.next < at && state.step < steps.length) { state.step++; state.next += 2_500 + (lane * 619) % 3_000; }
      return { ...running(lane), status: 'working', heldAt: null, open: state.step, sinceMs: 400_000 + at - 800, worth: state.step * 10 };
    };
    const push = setInterval(() => board.hear(frame('running', lively, started(GO))), 100);
    while (performance.now() - begun < ms) drawn.push(await new Promise(done => requestAnimationFrame(done)));
    clearInterval(push);
    time = () => NOW;
    return drawn;
  };
  window.stage = { show, play, pictures, names: Object.keys(scenes), get plan() { return board.lanes.plan; } };
}
