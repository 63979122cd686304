// Draws the curves of a site with uPlot, one panel for each unit. What is in sight is asked for again whenever that shows more.
(function () {
  'use strict';

  const root = document.getElementById('curves');
  if (!root || !window.uPlot) {
    return;
  }

  const DAY = 86400;
  const LONGEST = 400 * DAY;
  const SHORTEST = 120;
  const MARGIN = 0.25;
  const DASHES = [[], [10, 5], [2, 4], [12, 4, 2, 4], [5, 5], [14, 3, 2, 3, 2, 3]];
  const box = document.getElementById('panels');
  const sight = document.getElementById('in-sight');
  const trouble = document.getElementById('curves-trouble');
  const beside = root.dataset.beside === 'true';
  const view = { from: Number(root.dataset.from), to: Number(root.dataset.to) };
  // The gateway's clock may not be this device's.
  const ahead = Number(root.dataset.to) - Date.now() / 1000;
  const followed = root.dataset.now === 'true';
  let loaded = { from: 0, to: 0 };
  let panels = [];
  let asking = null;
  let frame = 0;
  let later = 0;
  let settled = 0;

  function now() {
    return followed ? Date.now() / 1000 + ahead : Math.max(Number(root.dataset.to), Date.now() / 1000);
  }

  // Times as they are at the site.
  function format(options) {
    const made = new Intl.DateTimeFormat(document.documentElement.lang, Object.assign({ timeZone: root.dataset.zone }, options));
    return (seconds) => made.format(new Date(seconds * 1000)).replace('\u202f', ' ');
  }
  const time = format({ hour: 'numeric', minute: '2-digit' });
  const exact = format({ hour: 'numeric', minute: '2-digit', second: '2-digit' });
  const day = format({ month: 'short', day: 'numeric' });
  const year = format({ month: 'short', day: 'numeric', year: 'numeric' });
  const clock = format({ hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });

  // As on the rest of the page, whatever the browser's own language is.
  const number = new Intl.NumberFormat('en-US');

  function words(seconds) {
    return (view.to - view.from > 200 * DAY ? year(seconds) : day(seconds)) + ', ' + time(seconds);
  }

  function marks(plot, splits, axis, space, step) {
    return splits.map((at) => (step >= DAY || clock(at) === '00:00' ? day(at) : step < 60 ? exact(at) : time(at)));
  }

  function inks() {
    const style = getComputedStyle(root);
    const of = (name) => style.getPropertyValue(name).trim();
    return { ink: of('--ink'), key: of('--key'), pencil: of('--pencil'), rule: of('--rule'), paper: of('--paper'), alarm: of('--alarm') };
  }

  // Within what there is, and no closer than two readings a minute could show.
  function look(from, to) {
    const length = Math.min(LONGEST, Math.max(SHORTEST, to - from));
    const middle = (from + to) / 2;
    const last = now() + length * 0.02;
    view.from = Math.max(now() - LONGEST * 1.02, Math.min(last, middle + length / 2) - length);
    view.to = view.from + length;
    if (!frame) {
      frame = requestAnimationFrame(draw);
    }
    clearTimeout(later);
    later = setTimeout(ask, 150);
  }

  function draw() {
    frame = 0;
    panels.forEach((panel) => panel.plot.setScale('x', { min: view.from, max: view.to }));
    sight.textContent = words(view.from) + ' – ' + words(view.to);
  }

  function enough() {
    const length = view.to - view.from;
    const covered = loaded.from <= view.from && loaded.to >= Math.min(view.to, now() - 60);
    return covered && loaded.to - loaded.from <= length * (1 + 2 * MARGIN) * 1.3;
  }

  function ask() {
    remember();
    if (enough()) {
      return;
    }
    const more = (view.to - view.from) * MARGIN;
    const from = Math.max(0, Math.floor(view.from - more));
    const to = Math.ceil(Math.min(view.to + more, Math.max(now() + 60, view.from + SHORTEST)));
    if (asking) {
      asking.abort();
    }
    asking = new AbortController();
    const query = new URLSearchParams({ points: root.dataset.points, from: from, to: to, beside: beside });
    fetch(root.dataset.figures + '?' + query, { signal: asking.signal, headers: { Accept: 'application/json' } })
      .then((answer) => {
        if (!answer.ok) {
          throw new Error('status ' + answer.status);
        }
        return answer.json();
      })
      .then((figures) => {
        loaded = { from: figures.from, to: figures.to };
        trouble.hidden = true;
        show(figures);
      })
      .catch((problem) => {
        if (problem.name !== 'AbortError') {
          trouble.textContent = root.dataset.away;
          trouble.hidden = false;
        }
      });
  }

  // In the address, so that it can be passed on; and in the words below.
  function remember() {
    clearTimeout(settled);
    const query = new URLSearchParams();
    root.dataset.points.split(',').forEach((point) => query.append('points', point));
    query.append('span', 'PT' + Math.round(view.to - view.from) + 'S');
    if (view.to < now() - 60) {
      query.append('until', new Date(Math.round(view.to) * 1000).toISOString());
    }
    if (beside) {
      query.append('beside', 'true');
    }
    const address = location.pathname + '?' + query;
    if (loaded.to) {
      history.replaceState(null, '', address);
      settled = setTimeout(() => tell(address), 700);
    }
  }

  function tell(address) {
    fetch(address, { headers: { Accept: 'text/html' } })
      .then((answer) => (answer.ok ? answer.text() : Promise.reject(new Error('status ' + answer.status))))
      .then((html) => {
        const fresh = new DOMParser().parseFromString(html, 'text/html').getElementById('accounts');
        const old = document.getElementById('accounts');
        if (fresh && !old.contains(document.activeElement)) {
          const open = [...old.querySelectorAll('details')].map((one) => one.open);
          old.replaceWith(fresh);
          fresh.querySelectorAll('details').forEach((one, i) => (one.open = open[i] || false));
          hidePlain();
        }
      })
      .catch(() => {});
  }

  function hidePlain() {
    document.querySelectorAll('.without-script').forEach((one) => (one.hidden = true));
  }

  function byUnit(figures) {
    const units = new Map();
    figures.curves.forEach((curve) => units.set(curve.unit, (units.get(curve.unit) || []).concat(curve)));
    return units;
  }

  function show(figures) {
    const units = byUnit(figures);
    const same = panels.length === units.size && panels.every((panel) => (units.get(panel.unit) || []).length === panel.curves.length);
    if (!same) {
      panels.forEach((panel) => panel.plot.destroy());
      box.replaceChildren();
      panels = [...units].map(([unit, curves]) => build(unit, curves));
    }
    panels.forEach((panel) => fill(panel, units.get(panel.unit), figures));
    if (!frame) {
      frame = requestAnimationFrame(draw);
    }
  }

  function fill(panel, curves, figures) {
    const has = (one) => curves.some((curve) => curve.point === one.point);
    panel.curves = curves;
    panel.limits = figures.limits.filter(has);
    panel.alarms = figures.alarms.filter(has);
    const tables = curves.map((curve) => {
      const wide = curve.low && curve.low.length > 0;
      return [curve.at, curve.mean, wide ? curve.low : curve.mean, wide ? curve.high : curve.mean];
    });
    panel.plot.setData(uPlot.join(tables), false);
    panel.plot.redraw(false, true);
    value(panel);
  }

  function stroke(curves, i, colours) {
    return curves[i].back ? colours.pencil : i % 2 ? colours.key : colours.ink;
  }

  function build(unit, curves) {
    const panel = { unit: unit, curves: curves, limits: [], alarms: [], colours: inks() };
    const frameOf = document.createElement('div');
    frameOf.className = 'panel';
    panel.keys = keys(curves);
    frameOf.append(panel.keys);
    box.append(frameOf);
    const series = [{}];
    const bands = [];
    curves.forEach((curve, i) => {
      series.push({ label: curve.name, stroke: () => stroke(panel.curves, i, panel.colours), width: curve.back ? 1.5 : 2, dash: DASHES[i % DASHES.length], points: { size: 4 } });
      series.push({ width: 0, points: { show: false } }, { width: 0, points: { show: false } });
      if (!curve.back) {
        bands.push({ series: [3 * i + 3, 3 * i + 2], fill: () => panel.colours.pencil + '40' });
      }
    });
    const axis = { stroke: () => panel.colours.ink, grid: { stroke: () => panel.colours.rule, width: 1 }, ticks: { show: false }, font: '13px "Public Sans", "Segoe UI", system-ui, sans-serif' };
    panel.plot = new uPlot({
      width: Math.max(200, box.clientWidth),
      height: height(),
      tzDate: (seconds) => uPlot.tzDate(new Date(seconds * 1000), root.dataset.zone),
      legend: { show: false },
      cursor: { drag: { x: false, y: false, setScale: false }, sync: { key: 'curves' }, points: { size: 7 }, bind: { dblclick: () => () => null } },
      scales: { x: { time: true, auto: false, min: view.from, max: view.to }, y: { range: (plot, low, high) => range(panel, low, high) } },
      axes: [Object.assign({ values: marks, space: 78 }, axis), Object.assign({ values: (plot, splits) => splits.map(number.format), size: 52, space: 32 }, axis)],
      series: series,
      bands: bands,
      hooks: { drawClear: [(plot) => underneath(plot, panel)], draw: [(plot) => over(plot, panel)], setCursor: [() => value(panel)] }
    }, [[], ...series.slice(1).map(() => [])], frameOf);
    panel.plot.root.setAttribute('aria-hidden', 'true');
    fingers(panel.plot);
    return panel;
  }

  function height() {
    return window.innerWidth < 640 ? 210 : 250;
  }

  // Over the curve, and over the limits that lie no farther from it than it is high.
  function range(panel, low, high) {
    const values = panel.limits.map((limit) => limit.value);
    if (low === null || high === null) {
      return values.length ? [Math.min(...values) - 1, Math.max(...values) + 1] : [0, 1];
    }
    const far = Math.max(high - low, Math.abs(high) / 4);
    const near = values.filter((value) => value > low - far && value < high + far).concat(low, high);
    const least = Math.min(...near);
    const most = Math.max(...near);
    const room = Math.max(most - least, Math.abs(most) / 100, 1e-6) * 0.08;
    return [least - room, most + room];
  }

  function underneath(plot, panel) {
    const pen = plot.ctx;
    pen.save();
    pen.fillStyle = panel.colours.paper;
    pen.fillRect(plot.bbox.left, plot.bbox.top, plot.bbox.width, plot.bbox.height);
    pen.restore();
  }

  function over(plot, panel) {
    const pen = plot.ctx;
    const dot = uPlot.pxRatio;
    const left = plot.bbox.left;
    const right = left + plot.bbox.width;
    const top = plot.bbox.top;
    const bottom = top + plot.bbox.height;
    pen.save();
    pen.beginPath();
    pen.rect(left, top, plot.bbox.width, plot.bbox.height);
    pen.clip();
    pen.lineWidth = 1.5 * dot;
    // The axes have left their own.
    pen.textAlign = 'left';
    pen.textBaseline = 'alphabetic';
    pen.font = 13 * dot + 'px "Public Sans", "Segoe UI", system-ui, sans-serif';
    panel.limits.forEach((limit) => edge(plot, panel, limit, left, right, dot));
    pen.strokeStyle = panel.colours.alarm;
    pen.fillStyle = panel.colours.alarm;
    panel.alarms.forEach((alarm) => {
      const from = plot.valToPos(alarm.from, 'x', true);
      const to = Math.max(from + 3 * dot, plot.valToPos(alarm.to, 'x', true));
      if (to >= left && from <= right) {
        pen.fillRect(from, top, to - from, 7 * dot);
        pen.beginPath();
        pen.moveTo(from, top);
        pen.lineTo(from, bottom);
        pen.stroke();
      }
    });
    pen.restore();
  }

  // A line with teeth on the side on which the trouble lies.
  function edge(plot, panel, limit, left, right, dot) {
    const pen = plot.ctx;
    const y = plot.valToPos(limit.value, 'y', true);
    const tip = limit.above ? y - 6 * dot : y + 6 * dot;
    pen.strokeStyle = panel.colours.pencil;
    pen.beginPath();
    pen.setLineDash([9 * dot, 3 * dot]);
    pen.moveTo(left, y);
    pen.lineTo(right, y);
    pen.stroke();
    pen.setLineDash([]);
    pen.beginPath();
    for (let x = left + 10 * dot; x < right; x += 26 * dot) {
      pen.moveTo(x, y);
      pen.lineTo(x + 6 * dot, tip);
    }
    pen.stroke();
    const many = panel.curves.filter((curve) => !curve.back).length > 1;
    const name = panel.curves.find((curve) => curve.point === limit.point).name;
    const text = (many ? name + ' ' : '') + limit.words + ' ' + limit.value;
    const width = pen.measureText(text).width;
    const base = limit.above ? y + 15 * dot : y - 6 * dot;
    pen.fillStyle = panel.colours.paper;
    pen.globalAlpha = 0.8;
    pen.fillRect(right - width - 8 * dot, base - 12 * dot, width + 6 * dot, 15 * dot);
    pen.globalAlpha = 1;
    pen.fillStyle = panel.colours.ink;
    pen.fillText(text, right - width - 5 * dot, base);
  }

  function keys(curves) {
    const list = document.createElement('ul');
    list.className = 'keys';
    curves.forEach((curve, i) => {
      const item = document.createElement('li');
      const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
      const line = document.createElementNS('http://www.w3.org/2000/svg', 'line');
      const at = { x1: 0, y1: 6, x2: 40, y2: 6, 'stroke-width': curve.back ? 1.5 : 2, 'stroke-dasharray': DASHES[i % DASHES.length].join(' ') };
      Object.keys(at).forEach((name) => line.setAttribute(name, at[name]));
      svg.setAttribute('aria-hidden', 'true');
      svg.append(line);
      const figure = document.createElement('b');
      item.append(svg, ' ' + curve.name + ' ', figure);
      list.append(item);
    });
    return list;
  }

  // The figure under the finger, or the last one in sight.
  function value(panel) {
    const plot = panel.plot;
    if (!plot || !plot.data || !plot.data[0].length) {
      return;
    }
    const under = plot.cursor.idx;
    panel.keys.querySelectorAll('b').forEach((figure, i) => {
      const means = plot.data[3 * i + 1] || [];
      let at = under === null || under === undefined ? means.length - 1 : under;
      while (at > 0 && (means[at] === undefined || means[at] === null || plot.data[0][at] > view.to)) {
        at--;
      }
      const known = means[at] !== undefined && means[at] !== null;
      figure.textContent = known ? means[at] + (panel.unit ? ' ' + panel.unit : '') + (under === null || under === undefined ? '' : ', ' + time(plot.data[0][at])) : '–';
    });
  }

  // One finger pulls, two spread; up and down the page is scrolled as ever.
  function fingers(plot) {
    const place = plot.over;
    const down = new Map();
    let start = null;
    const x = (event) => event.clientX - place.getBoundingClientRect().left;
    const begin = () => (start = { from: view.from, to: view.to, at: [...down.values()] });
    place.addEventListener('pointerdown', (event) => {
      if (event.button === 0) {
        place.setPointerCapture(event.pointerId);
        down.set(event.pointerId, x(event));
        begin();
      }
    });
    place.addEventListener('pointermove', (event) => {
      if (!down.has(event.pointerId)) {
        return;
      }
      down.set(event.pointerId, x(event));
      const at = [...down.values()];
      const length = start.to - start.from;
      if (at.length === 1) {
        const moved = ((start.at[0] - at[0]) / place.clientWidth) * length;
        look(start.from + moved, start.to + moved);
      } else {
        const before = Math.max(10, Math.abs(start.at[1] - start.at[0]));
        const after = Math.max(10, Math.abs(at[1] - at[0]));
        const wanted = Math.min(LONGEST, Math.max(SHORTEST, (length * before) / after));
        const held = start.from + ((start.at[0] + start.at[1]) / 2 / place.clientWidth) * length;
        const from = held - ((at[0] + at[1]) / 2 / place.clientWidth) * wanted;
        look(from, from + wanted);
      }
    });
    ['pointerup', 'pointercancel'].forEach((end) => place.addEventListener(end, (event) => {
      down.delete(event.pointerId);
      begin();
    }));
    place.addEventListener('touchmove', (event) => event.touches.length > 1 && event.preventDefault(), { passive: false });
    place.addEventListener('dblclick', (event) => closer(2, x(event) / place.clientWidth));
    place.addEventListener('wheel', (event) => {
      if (event.ctrlKey) {
        event.preventDefault();
        closer(Math.exp(-event.deltaY / 200), x(event) / place.clientWidth);
      }
    }, { passive: false });
  }

  function closer(times, held) {
    const length = view.to - view.from;
    const wanted = Math.min(LONGEST, Math.max(SHORTEST, length / times));
    const from = view.from + held * (length - wanted);
    look(from, from + wanted);
  }

  function move(part) {
    const by = (view.to - view.from) * part;
    look(view.from + by, view.to + by);
  }

  const deeds = {
    earlier: () => move(-0.5),
    later: () => move(0.5),
    closer: () => closer(2, 0.5),
    wider: () => closer(0.5, 0.5),
    now: () => look(now() - (view.to - view.from), now())
  };
  root.querySelectorAll('[data-do]').forEach((button) => button.addEventListener('click', deeds[button.dataset.do]));

  const strokes = {
    ArrowLeft: () => move(-0.1),
    ArrowRight: () => move(0.1),
    '+': deeds.closer,
    '=': deeds.closer,
    '-': deeds.wider,
    Home: () => look(now() - LONGEST, now()),
    End: deeds.now
  };
  box.addEventListener('keydown', (event) => {
    if (strokes[event.key] && !event.ctrlKey && !event.metaKey && !event.altKey) {
      event.preventDefault();
      strokes[event.key]();
    }
  });

  function paint() {
    panels.forEach((panel) => {
      panel.colours = inks();
      panel.plot.redraw(false, true);
    });
  }
  window.matchMedia('(prefers-color-scheme: dark)').addEventListener('change', paint);
  new ResizeObserver(() => panels.forEach((panel) => {
    if (box.clientWidth && panel.plot.width !== box.clientWidth) {
      panel.plot.setSize({ width: box.clientWidth, height: height() });
    }
  })).observe(box);

  // Who looks at the present goes along with it.
  setInterval(() => {
    if (!document.hidden && followed && Math.abs(view.to - loaded.to) < view.to - view.from && now() - view.to < 120) {
      loaded = { from: 0, to: 0 };
      deeds.now();
    }
  }, 60000);

  root.hidden = false;
  hidePlain();
  ask();
})();
