// A pad that shows any view of a made-up heat at once, on a clock that stands, without a server to talk to: every view can be looked at without playing a heat.
// Called on the pad's own page with { team, athletes }. Leaves window.stage.
async ({ team, athletes }) => {
  const { pad } = await import('/pad/pad.js'), { session, clock, hub, outbox, recorder, database } = pad;
  const [{ attempt }] = await Promise.all(['attempt', 'finish', 'shares', 'standard', 'timer'].map(view => import(`/pad/views/${view}.js`)));
  pad.attempt = attempt;
  const NOW = Date.UTC(2026, 10, 25, 14, 0), GO = NOW - 272_000, CAP_MS = 600_000, LANE = 12, IDS = 'stage';
  const nothing = () => Promise.resolve();
  hub.stop();
  hub.reportPhone = () => {};
  Object.assign(session, { refresh: nothing, readProgram: nothing, readSheet: nothing, catchUp: nothing, repeatReady: nothing, follow() {} });
  Object.assign(outbox, { kick() {}, certified: nothing });
  Object.assign(database, { keep: nothing, keepHeat: nothing });
  Object.assign(clock, { now: () => NOW, instantOf: () => NOW, uncertaintyMs: () => 6, quality: () => ({ word: 'good', ms: 6 }) });
  pad.updates.saw = nothing;

  const MOVEMENTS = [
    {
      id: 'snatch', name: 'synchronised dumbbell snatches over the box', unit: 'reps', standard: 'Both heads touch down.',
      fullStandard: {
        start: 'Both dumbbells on the floor, the athletes face each other over the box.', finish: 'Locked out overhead, hips and knees open, both at the same moment.',
        between: ['One unbroken pull from the floor to the lock-out.', 'The free hand touches neither the body nor the dumbbell.'], allowed: ['Either arm; changing hands below the hips.'],
        caution: 'Stop on pain or dizziness; put the dumbbell down, do not drop it on the box.',
      },
      faults: [{ name: 'Head did not touch the floor', how: 'A head of the dumbbell stayed above the floor.' }, { name: 'Not synchronised with the partner', how: null }, { name: 'Box stepped on', how: 'A foot stood on the box.' }],
    },
    { id: 'row', name: 'row', unit: 'cal', standard: 'Handle to the chain guard.', fullStandard: null, faults: [] },
  ];
  const stepsOf = all => all.map((more, i) => ({
    step: i + 1, kind: 'set', round: 1, leg: 1, athlete: 1, to: null, movement: '', movementId: null, quantity: 0, unit: 'reps', worth: 0, increment: 1, expectedMs: 30_000, earliestMs: 8_000, label: '', faults: [], ...more,
  }));
  const snatches = more => ({ movement: MOVEMENTS[0].name, movementId: 'snatch', quantity: 10, label: `10 ${MOVEMENTS[0].name}`, faults: MOVEMENTS[0].faults.map(({ name }) => name), ...more });
  const row = more => ({ movement: 'row', movementId: 'row', quantity: 1_200, unit: 'm', label: '1200 m row', ...more });
  const tag = { kind: 'tag', to: 2, label: `tag: ${athletes[0]} to ${athletes[1]}`, expectedMs: 2_000 };
  const WORK = [snatches(), row(), { kind: 'value', movement: 'lift', unit: 'kg', quantity: 1, label: 'heaviest single clean and jerk' }, tag, snatches({ round: 2, athlete: 2, with: [3] }), row({ round: 2, athlete: 2 }), { kind: 'finish', round: null, label: 'the line' }];
  const LIFTS = [1, 2, 3].map(nth => ({ kind: 'attempt', round: null, movement: 'lift', unit: 'kg', quantity: 1, label: `attempt ${nth}: heaviest single clean and jerk`, faults: ['Pressed out', 'Not locked out'] }));
  const POOL = [{ ...row({ quantity: 120, unit: 'cal', label: '120 cal row', athlete: 0 }), minimumEach: 20 }, snatches({ athlete: 0 })];
  const TURNS = [snatches(), snatches({ round: 2, athlete: 2 })], WINDOWS = [{ first: 1, last: 1, fromMs: 0, untilMs: 240_000 }, { first: 2, last: 2, fromMs: 300_000, untilMs: 540_000 }];

  const sheetOf = (steps, more) => ({
    language: document.documentElement.lang, of: LANE, heat: 'h1', sheet: 1, epoch: 'e1', competition: 'Breakwater Relays', title: 'Heat 12', workout: { name: 'Low Tide', summary: '' }, counting: 'reps', checkpointEvery: 5, capMs: CAP_MS, movements: MOVEMENTS,
    lanes: [{ lane: LANE, team: 't1', name: team, division: 'open', divisionName: 'Open', group: 'open', athletes, colour: 2, capMs: CAP_MS, plan: 1, steps: stepsOf(steps), expectedSteps: null, ...more }],
  });
  const frameOf = (phase, lane, more) => ({
    heat: 'h1', sheet: 1, epoch: 'e1', sequence: 5, phase, start: { id: 's1', goAt: GO, observed: false }, haltedAt: null, haltedMs: 0, endedAt: null, capMs: CAP_MS, calls: [],
    lanes: [{ lane: LANE, status: 'working', open: 1, seat: 's', judge: 'Mara', ready: true, owed: 0, worth: 0, officialMs: null, capMs: CAP_MS, creditMs: 0, ...lane }], ...more,
  });
  let nth = 0;
  const fact = (kind, more) => ({ sequence: ++nth, flags: [], fact: { fact: kind, id: `${IDS}.${nth}`, lane: LANE, instant: GO + nth * 10_000, uncertaintyMs: 6, start: 's1', plan: 1, seat: 's', ...more } });
  const done = (...steps) => steps.map(step => fact(WORK[step - 1].kind === 'tag' ? 'tag-made' : 'step-done', { step }));
  const by = { name: 'Hedda', role: 'head-judge' }, ruled = (kind, more) => fact(kind, { by, seat: undefined, ...more });
  const before = phase => ({ frame: frameOf(phase, { ready: false }, { start: null }) });
  const works = (entries = [], more = {}) => ({ entries, ...more });
  const capped = { frame: frameOf('running', {}, { start: { id: 's1', goAt: NOW - CAP_MS - 4_000, observed: false } }) };
  const kg = (step, load, good) => fact('attempt-judged', { step, load, good, ...(!good && { fault: 'Pressed out' }) });
  const all = done(1, 2, 3, 4, 5, 6, 7);

  const scenes = {
    'join': () => ({ kept: { joined: null } }),
    'signed out': () => ({ kept: { heat: null }, pad: { pendingCode: 'K7F3M2QX' }, signedOut: true, then: () => { document.querySelector('[data-act=code]').value = ''; document.querySelector('[data-act=join]').click(); } }),
    'waiting': () => ({ kept: { heat: null } }),
    'nothing planned': () => ({ kept: { heat: null }, program: { heats: [] } }),
    'confirm': () => ({ ...before('called'), kept: { seat: null } }),
    'confirm late': () => ({ kept: { seat: null }, pad: { notMine: true } }),
    'choose': () => ({ ...before('called'), kept: { seat: null }, pad: { choosing: true }, judge: '' }),
    'choose over': () => ({ ...before('called'), kept: { seat: null }, pad: { choosing: true, problem: { code: 'offline', message: '' } } }),
    'checks': () => ({ ...before('called'), kept: { ready: null }, pad: { power: { percent: 22, charging: false } } }),
    'ready': () => ({ ...before('armed'), kept: { readyHeard: null, noStart: 'recalled' }, offline: true }),
    'ready timekeeper': () => ({ ...before('armed'), kept: { duty: 'timekeeper', noStart: 'returned' } }),
    'count-down': () => ({ frame: frameOf('counting-down', {}, { start: { id: 's1', goAt: NOW + 42_000, observed: false } }) }),
    'go': () => ({ frame: frameOf('counting-down', {}, { start: { id: 's1', goAt: NOW, observed: false } }), pad: {} }),
    'set': () => works([fact('no-rep', { step: 1, fault: null })]),
    'count': () => works([fact('count-reached', { step: 1, count: 5 })], { frame: frameOf('running', { owed: 2, open: 1 }) }),
    'distance': () => works(done(1)),
    'reading': () => works(done(1, 2), { then: () => { for (const key of ['8', '2', '.', '5']) document.querySelector(`[data-act="key-${key}"]`).click(); } }),
    'tag': () => works(done(1, 2, 3)),
    'two at once': () => works(done(1, 2, 3, 4)),
    'line': () => works(done(1, 2, 3, 4, 5, 6)),
    'faults': () => works([fact('no-rep', { step: 1, fault: null })], { pad: { faultsFor: { faults: MOVEMENTS[0].faults.map(({ name }) => name), until: Infinity } } }),
    'early': () => works([], { then: () => pad.note('early', 60_000) }),
    'halted': () => works(done(1), { frame: frameOf('halted', {}, { haltedAt: NOW - 5_000 }) }),
    'refused': () => works(done(1), { taps: [{ heat: 'h1', state: 'refused', code: 'lane-stopped', detail: '', fact: { ...fact('step-done', { step: 2 }).fact } }], unsent: 3 }),
    'not stored': () => works(done(1), { taps: [1, 2, 3].map(() => ({ heat: 'h1', state: 'waiting', fact: fact('no-rep', { step: 2, fault: null }).fact })), storing: false, offline: true }),
    'owed': () => works([...done(1), ruled('reps-owed', { step: 1, reps: 3, reason: 'the box moved' })]),
    'penalised': () => works([...done(1), ruled('penalised', { addMs: 5_500, reason: 'equipment left on the lane' })]),
    'voided': () => works([...done(1, 2), ruled('voided', { target: `${IDS}.2` })]),
    'calling': () => works(done(1), { then: () => pad.callHeadJudge(0) }),
    'called': () => works(done(1), { frame: frameOf('running', {}, { calls: [LANE] }) }),
    'standard': () => works([], { then: () => pad.open('standard') }),
    'standard of a tag': () => works(done(1, 2, 3), { then: () => pad.open('standard') }),
    'no standard': () => works(done(1, 2), { then: () => pad.open('standard') }),
    'here': () => works(done(1, 2), { pad: { panel: 'here' } }),
    'away': () => works(done(1), { pad: { away: true } }),
    'attempt': () => works([], { sheet: sheetOf(LIFTS) }),
    'attempt typed': () => works([kg(1, 102.5, true), kg(2, 110, false)], { sheet: sheetOf(LIFTS), then: () => { for (const key of ['1', '1', '2', '.', '5']) document.querySelector(`[data-act="key-${key}"]`).click(); } }),
    'shares': () => works([fact('athlete-working', { step: 1, athlete: 1 })], { sheet: sheetOf(POOL) }),
    'shares panel': () => works([fact('athlete-working', { step: 1, athlete: 1 }), fact('count-reached', { step: 1, count: 1 }), fact('athlete-working', { step: 1, athlete: 2 })], { sheet: sheetOf(POOL), then: () => pad.open('shares') }),
    'rest': () => works([fact('step-done', { step: 1 })], { sheet: sheetOf(TURNS, { windows: WINDOWS }) }),
    'round over': () => works([], { sheet: sheetOf(TURNS, { windows: WINDOWS }) }),
    'cap': () => works([], capped),
    'cap counted': () => works([fact('reps-at-cap', { step: 1, count: 7 })], capped),
    'cap reading': () => works(done(1, 2), capped),
    'finish': () => works(all),
    'finish certified': () => works(all, { frame: frameOf('certified', { officialMs: 271_350 }) }),
    'finish capped': () => works([...done(1, 2, 3, 4), fact('reps-at-cap', { step: 5, count: 7 })], { frame: frameOf('ended', { worth: 1_417, status: 'capped' }) }),
    'finish of lifts': () => works([kg(1, 102.5, true), kg(2, 110, true), kg(3, 120, false)], { sheet: sheetOf(LIFTS, { score: { unit: 'kg', scale: 1_000 } }), frame: frameOf('running', { worth: 110_000 }) }),
    'read back': () => works([...all, fact('score-read-back', { agreed: false, name: athletes[1] })], { next: { id: 'h2', title: 'Heat 13' } }),
    'withdrew': () => works([...done(1), fact('lane-stopped', { reason: 'withdrew' })]),
    'medical': () => works([...done(1), fact('lane-stopped', { reason: 'medical' })]),
    'did not start': () => ({ ...before('called'), frame: frameOf('called', { status: 'withdrawn' }, { start: null }) }),
    'timer': () => works([], { kept: { duty: 'timekeeper' } }),
    'timed': () => works([fact('finish-timed', {})], { kept: { duty: 'timekeeper' } }),
    'timed nothing': () => works([], { kept: { duty: 'timekeeper' }, frame: frameOf('ended') }),
    'witness': () => works([], { kept: { duty: 'witness' } }),
    'taken': () => works([], { frame: frameOf('running', { seat: 'other', judge: 'Wilhelmina-Charlotte' }) }),
    'tab': () => ({ pad: { alone: false } }),
  };

  const program = { competition: 'Breakwater Relays', heats: [13, 14].map((number, at) => ({ heat: `h${number}`, number, title: `Heat ${number}`, phase: 'planned', plannedAt: NOW + (5 + at * 20) * 60_000, lanes: [{ lane: LANE, name: team, division: 'open' }] })) };
  const pictures = async count => { for (let i = 0; i < count; i++) await new Promise(drawn => requestAnimationFrame(drawn)); };

  /** @returns {Promise<string>} the pad's view */
  const show = async name => {
    nth = 0;
    const scene = scenes[name](), heat = { heat: 'h1', sheet: scene.sheet ?? sheetOf(WORK), frame: scene.frame ?? frameOf('running'), entries: scene.entries ?? [], head: 99 };
    Object.assign(session, { heats: new Map([['h1', heat]]), signedOut: !!scene.signedOut, next: scene.next ?? null, program: scene.program ?? program, serverBuild: '3f2a9c01' });
    session.kept = { heat: 'h1', seat: 's', seatSince: 0, ready: 'h1', readyHeard: 6, begun: null, noStart: '', ruling: 0, duty: 'primary', joined: { lane: LANE, judge: 'Mara', competition: 'Breakwater Relays' }, left: null, epoch: 'e1', hand: 'right', look: session.kept.look, hiddenAt: null, ...scene.kept };
    hub.state = scene.offline ? 'offline' : 'online';
    outbox.taps = scene.taps ?? [];
    outbox.storing = scene.storing ?? true;
    recorder.storing = [];
    clearTimeout(pad.noteTimer);
    Object.assign(pad, { offlineSince: -10_000, panel: null, panelOf: 0, faultsFor: null, problem: null, asking: false, notMine: false, choosing: false, transient: '', away: false, alone: true, callAt: 0, pendingCode: '', soundHeard: false, power: null, touches: 2, ...scene.pad });
    pad.drawn = null;
    pad.view = '';
    for (let tries = 0; tries < 100 && (pad.view === '' || pad.viewName() !== pad.view); tries++) { pad.draw(); await pictures(1); }
    pad.draw();
    await scene.then?.();
    await pictures(2);
    for (const one of document.querySelectorAll('.settling')) one.classList.remove('settling');
    return pad.view;
  };
  window.stage = { show, names: Object.keys(scenes), look: look => { session.kept.look = look; } };
}
