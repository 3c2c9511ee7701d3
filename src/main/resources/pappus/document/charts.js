// Draws every chart of a page from its data; the table beside each says the same in words.
"use strict";
// Texts may hold names from anywhere: what would hide or turn them is told by its number, and letters from right to
// left stand by themselves (U+2068 to U+2069), so that the numbers beside them keep their places.
const safe = text => text
  .replace(/[\p{C}\p{Zl}\p{Zp}]/gu, sign => {
    const number = sign.codePointAt(0).toString(16);
    return number.length > 4 ? "\\u{" + number + "}" : "\\u" + number.padStart(4, "0");
  })
  .replace(/[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc\u{10800}-\u{10fff}\u{1e800}-\u{1efff}](?:[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc\u{10800}-\u{10fff}\u{1e800}-\u{1efff}0-9 '"./&+-]*[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc\u{10800}-\u{10fff}\u{1e800}-\u{1efff}])?/gu, name => "\u2068" + name + "\u2069");
const pageData = JSON.parse(document.getElementById("data").textContent,
  (key, value) => typeof value === "string" ? safe(value) : value);
const element = (name, text, attributes = {}) => {
  const made = document.createElement(name);
  if (text) made.textContent = text;
  Object.entries(attributes).forEach(([key, value]) => made.setAttribute(key, value));
  return made;
};

/** On a phone rows are laid out as two lines: what they are has to be said then, or a reader takes them for none. */
function named(table) {
  const roles = {THEAD: "rowgroup", TBODY: "rowgroup", TR: "row", TD: "cell"};
  table.setAttribute("role", "table");
  table.querySelectorAll("thead, tbody, tr, td, th").forEach(one => one.setAttribute("role",
    roles[one.tagName] || (one.scope === "row" ? "rowheader" : "columnheader")));
}
document.querySelectorAll("table.rows").forEach(named);

/** A table of texts: columns of a title and whether it is of numbers, and rows of texts; its rows as two lines or not. */
function tableOf(caption, columns, rows, isTwoLines = columns.length > 3) {
  const table = element("table", "", isTwoLines ? {class: "rows"} : {});
  table.append(element("caption", caption, {class: "said-above"}));
  const head = table.createTHead().insertRow();
  const numbers = columns.map(([, isNumber]) => isNumber ? {class: "num"} : {});
  columns.forEach(([title], i) =>
    head.append(title ? element("th", title, {scope: "col", ...numbers[i]}) : element("td", "")));
  const body = table.createTBody();
  rows.forEach(cells => {
    const row = body.insertRow();
    cells.forEach((text, i) => row.append(i
      ? element("td", text, {...numbers[i], ...(isTwoLines && columns[i][1] && text ? {"data-title": columns[i][0]} : {})})
      : element("th", text, {scope: "row", ...numbers[i]})));
  });
  if (isTwoLines) named(table);
  return table;
}

/** A table that scrolls by itself, so that the page never does sideways. */
function scrolling(label, ...tables) {
  const box = element("div", "", {class: "scroll", tabindex: "0", role: "region", "aria-label": label});
  box.append(...tables);
  return box;
}

const charts = (() => {
  // What charts have alike is there once, and numbers that are drawn are those of the table.
  const unpacked = new Map();
  function chartOf(id) {
    if (!unpacked.has(id)) {
      const own = pageData.charts[id];
      const chart = {...pageData.frames[own.frame], ...own};
      chart.marks = own.marks.map(([at, label, across]) => ({at, label, across}));
      chart.bars = own.bars?.map(([name, value]) => ({name, value}));
      chart.numbers = typeof own.numbers[0] === "string"
        ? d3.transpose(own.numbers.map(column => column.split(" ")))
        : own.numbers.map(row => pageData.rows[row]);
      chart.series ??= (chart.curves ?? []).map(({name, style, columns: [x, y]}) =>
        ({name, style, points: chart.numbers.map(row => [+row[x], +row[y]])}));
      unpacked.set(id, chart);
    }
    return unpacked.get(id);
  }

  const TONES = 6;
  const tone = i => "s" + (i % TONES);
  const spoken = (value, axis) =>
    axis.ticks ? axis.ticks[value] : value.toFixed(axis.decimals) + (axis.unit ? " " + axis.unit : "");
  const titled = axis => axis.label + (axis.unit ? ", " + axis.unit : "");

  function extent(values, fromZero) {
    let [low, high] = d3.extent(values);
    if (fromZero) low = Math.min(0, low);
    if (low === high) { low -= 1; high += 1; }
    const room = 0.06 * (high - low);
    return [fromZero && low === 0 ? 0 : low - room, high + room];
  }

  function scale(axis, values, range) {
    const domain = axis.ticks ? [-0.5, axis.ticks.length - 0.5] : extent(values, axis.fromZero);
    return d3.scaleLinear(domain, range);
  }

  function ticksOf(axis, scale, room, each) {
    if (!axis.ticks) return scale.ticks(Math.max(2, Math.min(8, Math.floor(room / each))));
    const step = Math.max(1, Math.ceil(axis.ticks.length * each / room));
    return d3.range(0, axis.ticks.length, step);
  }

  const format = axis => value =>
    axis.ticks ? axis.ticks[value] : d3.format("~r")(+value.toPrecision(6));

  function svgIn(box, width, height, label) {
    box.replaceChildren();
    return d3.select(box).append("svg")
      .attr("viewBox", `0 0 ${width} ${height}`)
      .attr("role", "img")
      .attr("aria-label", label);
  }

  /** Axes; numbers across stand so far further below, where something lies on the axis. */
  function axes(svg, chart, x, y, frame, below = 0) {
    const across = ticksOf(chart.x, x, frame.right - frame.left, 62);
    const up = ticksOf(chart.y, y, frame.bottom - frame.top, 42);
    svg.append("g").attr("class", "grid").selectAll("line").data(up).join("line")
      .attr("x1", frame.left).attr("x2", frame.right).attr("y1", y).attr("y2", y);
    svg.append("g").attr("class", "axis").attr("transform", `translate(0,${frame.bottom})`)
      .call(d3.axisBottom(x).tickValues(across).tickFormat(format(chart.x)).tickPadding(3 + below));
    svg.append("g").attr("class", "axis").attr("transform", `translate(${frame.left},0)`)
      .call(d3.axisLeft(y).tickValues(up).tickFormat(format(chart.y)));
    svg.append("text").attr("class", "axis-label").attr("x", frame.right).attr("y", frame.bottom + 34 + below)
      .attr("text-anchor", "end").text(titled(chart.x));
    svg.append("text").attr("class", "axis-label").attr("x", 4).attr("y", 12).text(titled(chart.y));
  }

  // How far down the fewest points lie under the words: at the top, the bottom, or between.
  function emptier(at, label, right, points, x, y, frame, index) {
    const wide = 7 * label.length;
    const low = right ? at - wide : at, high = right ? at : at + wide;
    const under = points.filter(p => x(p[0]) > low - 12 && x(p[0]) < high + 12);
    const places = [frame.top + 12 + 15 * index, frame.bottom - 6 - 15 * index, (frame.top + frame.bottom) / 2 + 15 * index];
    return d3.least(places, place => under.filter(p => Math.abs(y(p[1]) - place + 4) < 16).length);
  }

  function mark(svg, one, x, y, frame, index, points = []) {
    const upright = one.across === false;
    const at = upright ? x(one.at) : y(one.at);
    const group = svg.append("g").attr("class", "mark");
    if (upright) {
      const right = at > (frame.left + frame.right) / 2;
      group.append("line").attr("x1", at).attr("x2", at).attr("y1", frame.top).attr("y2", frame.bottom);
      group.append("text").attr("class", "halo").attr("x", at + (right ? -5 : 5))
        .attr("y", emptier(at, one.label, right, points, x, y, frame, index))
        .attr("text-anchor", right ? "end" : "start").text(one.label);
    } else {
      group.append("line").attr("x1", frame.left).attr("x2", frame.right).attr("y1", at).attr("y2", at);
      group.append("text").attr("class", "halo").attr("x", frame.right - 4)
        .attr("y", at - 5 < frame.top + 10 ? at + 14 : at - 5).attr("text-anchor", "end").text(one.label);
    }
  }

  const symbols = [d3.symbolCircle, d3.symbolDiamond, d3.symbolSquare, d3.symbolTriangle, d3.symbolStar, d3.symbolCross];
  const dashes = ["", "7 4", "2 4", "10 3 2 3", "4 2", "1 3"];
  const dash = i => dashes[(i + Math.floor(i / TONES)) % TONES];
  const joined = {
    "line": d3.curveLinear, "line-points": d3.curveLinear, "steps": d3.curveStepAfter, "steps-back": d3.curveStepBefore
  };
  const size = style => style === "small-points" ? 14 : style === "points" ? 90 : 30;

  // A point is across, up, its name, what to count on where up is what is expected, and whether nobody should believe it.
  const low = p => p[3] ?? p[1];
  const hollow = p => p[4] === 1;

  function legend(box, chart) {
    if (chart.series.length < 2) return;
    const items = d3.select(box).append("ul").attr("class", "legend").attr("aria-hidden", "true")
      .selectAll("li").data(chart.series).join("li");
    const swatch = items.append("svg").attr("viewBox", "0 0 26 14").attr("class", (d, i) => tone(i));
    swatch.each(function (d, i) {
      const here = d3.select(this);
      if (joined[d.style])
        here.append("path").attr("class", "line").attr("d", "M1,7H25").attr("stroke-dasharray", dash(i));
      if (d.style !== "line")
        here.append("path").attr("class", "dot").attr("transform", "translate(13,7)")
          .attr("d", d3.symbol(symbols[i % TONES], 60)());
    });
    items.append("span").text(d => d.name);
  }

  function xy(box, chart) {
    const width = room(box), height = Math.max(230, Math.min(360, 0.66 * width));
    const svg = svgIn(box, width, height, chart.title + ". " + chart.reading);
    const points = chart.series.flatMap(one => one.points);
    const upright = chart.marks.filter(one => !one.across);
    const level = chart.marks.filter(one => one.across);
    const frame = {left: 50, right: width - 14, top: 24, bottom: height - 42};
    const x = scale(chart.x, points.map(p => p[0]).concat(upright.map(m => m.at)), [frame.left, frame.right]);
    const y = scale(chart.y, points.flatMap(p => [p[1], low(p)]).concat(level.map(m => m.at)), [frame.bottom, frame.top]);
    axes(svg, chart, x, y, frame);
    const line = d3.line(p => x(p[0]), p => y(p[1]));
    // What a label would hide beside the points: lines and marks.
    const crossed = level.flatMap(m => d3.range(0, 1, 0.05).map(t => [x.invert(frame.left + t * (frame.right - frame.left)), m.at]));
    chart.series.forEach((one, i) => {
      const group = svg.append("g").attr("class", tone(i));
      if (joined[one.style]) {
        const drawn = line.curve(joined[one.style]);
        if (one.points.some(p => low(p) < p[1]))
          group.append("path").attr("class", "area")
            .attr("d", d3.area(p => x(p[0]), p => y(low(p)), p => y(p[1])).curve(joined[one.style])(one.points));
        const path = group.append("path").attr("class", "line").attr("d", drawn(one.points)).attr("stroke-dasharray", dash(i)).node();
        d3.range(0, path.getTotalLength(), 12).map(l => path.getPointAtLength(l)).forEach(p => crossed.push([x.invert(p.x), y.invert(p.y)]));
      } else {
        group.selectAll("path.whisker").data(one.points.filter(p => low(p) < p[1])).join("path").attr("class", "whisker")
          .attr("d", p => `M${x(p[0])},${y(p[1])}V${y(low(p))}m-3,0h6`);
      }
      if (one.style !== "line") {
        group.selectAll("path.dot").data(one.points).join("path")
          .attr("class", p => (one.style === "small-points" ? "dot faint" : "dot") + (hollow(p) ? " hollow" : ""))
          .attr("d", d3.symbol(symbols[i % TONES], size(one.style))())
          .attr("transform", p => `translate(${x(p[0])},${y(p[1])})`);
      }
    });
    upright.forEach((one, i) => mark(svg, one, x, y, frame, i, points.concat(crossed)));
    level.forEach(one => mark(svg, one, x, y, frame, 0));
    legend(box, chart);
    readout(box, svg, chart, x, y);
  }

  // Says the point nearest to a finger or a mouse; the table has them all for everybody.
  function readout(box, svg, chart, x, y) {
    const said = d3.select(box).append("p").attr("class", "readout").attr("aria-hidden", "true");
    const every = chart.series.flatMap(one => one.points.map(p => ({p, name: one.name})));
    svg.on("pointermove", event => {
      const [px, py] = d3.pointer(event);
      const near = d3.least(every, ({p}) => Math.hypot(x(p[0]) - px, y(p[1]) - py));
      if (near) said.text((near.p[2] || near.name) + ": " + spoken(near.p[0], chart.x) + ", "
        + (low(near.p) < near.p[1] ? "plan on " + spoken(low(near.p), chart.y) + ", expect " : "") + spoken(near.p[1], chart.y));
    });
  }

  function bar(box, chart) {
    const width = room(box), height = 120;
    const svg = svgIn(box, width, height, chart.title + ". " + chart.reading);
    const total = d3.sum(chart.bars, one => Math.max(0, one.value));
    const most = Math.max(total + chart.doubt, ...chart.marks.map(one => one.at));
    const frame = {left: 8, right: width - 14, top: 40, bottom: 80};
    const x = d3.scaleLinear([0, most * 1.03], [frame.left, frame.right]);
    let sum = 0;
    const laid = chart.bars.filter(one => one.value > 0)
      .map(one => ({name: one.name, value: one.value, from: sum, to: (sum += one.value)}));
    const group = svg.append("g").selectAll("g").data(laid).join("g").attr("class", (d, i) => tone(i));
    group.append("rect").attr("class", "segment").attr("x", d => x(d.from)).attr("width", d => Math.max(0.5, x(d.to) - x(d.from)))
      .attr("y", frame.top).attr("height", frame.bottom - frame.top)
      .append("title").text(d => d.name + ": " + spoken(d.value, chart.x));
    group.filter(d => x(d.to) - x(d.from) > 7.2 * d.name.length + 8).append("text").attr("class", "segment-label")
      .attr("x", d => x((d.from + d.to) / 2)).attr("y", 64).attr("text-anchor", "middle").text(d => d.name);
    if (chart.doubt > 0) {
      const low = x(chart.total - chart.doubt), high = x(chart.total + chart.doubt), middle = frame.bottom + 7;
      svg.append("path").attr("class", "whisker").attr("fill", "none")
        .attr("d", `M${low},${middle - 4}v8M${low},${middle}H${high}M${high},${middle - 4}v8`);
    }
    chart.marks.forEach((one, i) => mark(svg, one, x, x, {left: frame.left, right: frame.right, top: frame.top - 32, bottom: frame.bottom}, i));
    svg.append("g").attr("class", "axis").attr("transform", `translate(0,${frame.bottom + 14})`)
      .call(d3.axisBottom(x).ticks(Math.max(2, Math.floor(width / 90))));
    svg.append("text").attr("class", "axis-label").attr("x", frame.left).attr("y", 12).text(titled(chart.x));
    const items = d3.select(box).append("ul").attr("class", "legend").attr("aria-hidden", "true")
      .selectAll("li").data(laid).join("li");
    items.append("svg").attr("viewBox", "0 0 26 14").attr("class", (d, i) => tone(i))
      .append("rect").attr("class", "segment").attr("x", 6).attr("width", 14).attr("height", 14);
    items.append("span").text(d => d.name + " " + spoken(d.value, chart.x));
  }

  function rows(box, chart) {
    const width = room(box), each = 46, height = 40 + each * chart.rows.length;
    const svg = svgIn(box, width, height, chart.title + ". " + chart.reading);
    const values = chart.rows.flatMap(r => [r.low, r.high, r.at - r.doubt, r.at + r.doubt]).concat(chart.marks.map(m => m.at));
    const frame = {left: 8, right: width - 14, top: 6, bottom: height - 36};
    const x = d3.scaleLinear(extent(values, false), [frame.left, frame.right]);
    // Before the rows, or it would strike their names through.
    chart.marks.forEach(one => svg.append("g").attr("class", "mark").append("line")
      .attr("x1", x(one.at)).attr("x2", x(one.at)).attr("y1", frame.top).attr("y2", frame.bottom));
    chart.rows.forEach((one, i) => {
      const top = frame.top + i * each, middle = top + 28;
      svg.append("rect").attr("class", "band").attr("x", x(one.low)).attr("width", Math.max(1, x(one.high) - x(one.low)))
        .attr("y", middle - 8).attr("height", 16);
      svg.append("path").attr("class", "whisker").attr("fill", "none")
        .attr("d", `M${x(one.at - one.doubt)},${middle}H${x(one.at + one.doubt)}`);
      svg.append("path").attr("class", "dot s1").attr("d", d3.symbol(d3.symbolDiamond, 80)())
        .attr("transform", `translate(${x(one.at)},${middle})`);
      svg.append("text").attr("class", "halo").attr("x", frame.left).attr("y", top + 12).text(one.name);
    });
    svg.append("g").attr("class", "axis").attr("transform", `translate(0,${frame.bottom})`)
      .call(d3.axisBottom(x).ticks(Math.max(2, Math.floor(width / 90))));
    svg.append("text").attr("class", "axis-label").attr("x", frame.right).attr("y", height - 2)
      .attr("text-anchor", "end").text(titled(chart.x));
  }

  // On paper charts stand two in a row, or one by itself: drawn for that room, their letters keep their size.
  const PAPER = 318;
  const SHEET = 690;
  let onPaper = false;
  const room = box => onPaper ? (box.dataset.draw ? SHEET : PAPER) : box.clientWidth;
  const own = new Map();
  const draw = box => {
    if (box.dataset.draw) {
      const drawing = own.get(box.dataset.draw);
      if (drawing) drawing(box, room(box));
      return;
    }
    const chart = chartOf(box.dataset.chart);
    kinds[chart.kind](box, chart);
  };
  const all = [];
  function printing(isPrinting) {
    onPaper = isPrinting;
    all.forEach(box => { if (drawn.has(box)) draw(box); });
  }
  addEventListener("beforeprint", () => printing(true));
  addEventListener("afterprint", () => printing(false));

  const kinds = {xy, bar, rows};
  const drawn = new WeakMap();
  const watch = new ResizeObserver(entries => entries.forEach(({target}) => {
    const width = target.clientWidth;
    if (width > 40 && drawn.get(target) !== width) {
      drawn.set(target, width);
      draw(target);
    }
  }));
  const add = box => {
    all.push(box);
    watch.observe(box);
  };
  document.querySelectorAll("[data-chart], [data-draw]").forEach(add);

  // Numbers are written when they are asked for: most never are.
  function tell(fold, box, id) {
    fold.addEventListener("toggle", () => {
      const chart = chartOf(id);
      if (!box.firstChild) box.append(tableOf(chart.title, chart.columns, chart.numbers));
    });
  }
  document.querySelectorAll("[data-numbers]").forEach(box => tell(box.parentElement, box, box.dataset.numbers));

  /** A chart with its title and its numbers, as the page's template has them. */
  function figure(id) {
    const chart = chartOf(id);
    const caption = element("figcaption", "");
    caption.append(element("strong", chart.title), " " + chart.reading);
    const plot = element("div", "", {class: "plot", "data-chart": id});
    const numbers = scrolling(chart.title);
    const fold = element("details", "");
    fold.append(element("summary", "The numbers"), numbers);
    tell(fold, numbers, id);
    const made = element("figure", "");
    made.append(caption, plot, fold);
    add(plot);
    return made;
  }

  return {
    svgIn, axes, figure,
    /** Lets a script of its own draw what its data-draw names, now and whenever its room changes. */
    draws(name, drawing) {
      own.set(name, drawing);
      return () => all.forEach(box => { if (box.dataset.draw === name && drawn.has(box)) draw(box); });
    }
  };
})();
