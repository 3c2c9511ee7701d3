// What is traded for what: flight against price or mass, one mark for each set of four main parts. Hollow marks are too
// good to be true; the front, the most to plan with for no more of what is believed, is drawn last.
const [NEEDED, CENTS, FLOWN, PLANNED, GRAMS, THRUST, WATTS, DOUBTED, MAIN, OTHERS] = d3.range(10);
pageData.builds = d3.transpose(pageData.builds.map((column, i) =>
  column.split(" ").map(text => parseInt(text, 36) / ({[GRAMS]: 10, [THRUST]: 100, [WATTS]: 10}[i] ?? 1))));
const trade = (() => {
  const PER_UNIT = pageData.unit === "km" ? 1e6 : 6e4;
  const builds = pageData.builds;
  const flown = build => build[FLOWN] / PER_UNIT;
  const planned = build => build[PLANNED] / PER_UNIT;
  const across = {price: build => build[CENTS] / 100, mass: build => build[NEEDED] / 1000};
  const picks = new Map(pageData.picks);

  // The chosen one, then what is ranked or picked, then the longest of each other set of main parts.
  const marked = [];
  const claimed = new Set();
  const claim = (number, look) => {
    if (claimed.has(builds[number][MAIN])) return;
    claimed.add(builds[number][MAIN]);
    marked.push({number, look});
  };
  claim(pageData.chosen, "chosen");
  pageData.picks.forEach(([number]) => claim(number, "ranked"));
  pageData.ranked.forEach(number => claim(number, "ranked"));
  pageData.saving.forEach(number => claim(number, "other"));
  builds.forEach((build, number) => claim(number, "other"));

  const looks = new Map(marked.map(({number, look}) => [number, look]));
  /** Squares stand at what is expected, with a whisker down to what to plan with; all else at what to plan with. */
  const up = number => (["chosen", "ranked"].includes(looks.get(number)) ? flown : planned)(builds[number]);

  /** The front from the least on: of each more can be planned with than of all that take less. */
  function front(against) {
    const least = d3.sort(builds.slice(0, pageData.onFront), against, build => -build[PLANNED]);
    let best = -1;
    return least.filter(build => build[PLANNED] > best && (best = build[PLANNED], true));
  }

  function ends(axis, input) {
    const values = builds.map(across[axis]);
    const high = Math.max(input ? +input.max : 0, d3.max(values));
    const low = Math.min(input ? +input.min : Infinity, d3.min(values));
    return [low - 0.02 * (high - low), high + 0.04 * (high - low)];
  }

  /** The slider lies on the axis: numbers stand below it. */
  const BELOW = 9;

  const symbol = {chosen: [d3.symbolCircle, 150], ranked: [d3.symbolSquare, 60], other: [d3.symbolCircle, 16]};

  /** The label of a point where it lies on no mark, if there is such a place. */
  function place(px, py, text, frame, dots) {
    const wide = 6.6 * text.length, high = 12;
    const places = [[8, -14], [-8 - wide, -14], [-wide / 2, -24], [8, 6], [-8 - wide, 6], [-wide / 2, 14],
      [16, -30], [-16 - wide, -30], [-wide / 2, 28], [-wide / 2, 44]]
      .map(([dx, dy]) => ({x: px + dx, y: py + dy}))
      .filter(one => one.x > frame.left && one.x + wide < frame.right && one.y > 4 && one.y + high < frame.bottom);
    const under = one => dots.filter(([x, y]) => x > one.x - 4 && x < one.x + wide + 4 && y > one.y - 4 && y < one.y + high + 4).length;
    const best = d3.least(places, under);
    if (best) for (let x = best.x; x < best.x + wide; x += 6) dots.push([x, best.y + high / 2]);
    return best && {x: best.x, y: best.y + high - 2};
  }

  /**
   * Draws it.
   *
   * @param view axis, pinned build or null, limit input or null
   * @param pin called with the number of the build whose mark was tapped
   */
  function draw(box, width, view, pin) {
    const height = width < 500 ? 208 : 338;
    const against = across[view.axis];
    const svg = charts.svgIn(box, width, height, pageData.titles[view.axis] + " Flight in " + pageData.unit + " against " + view.axis
      + "; the numbers stand below.");
    const frame = {left: 34, right: width - 8, top: 20, bottom: height - 38 - BELOW};
    const x = d3.scaleLinear(ends(view.axis, view.limit), [frame.left, frame.right]);
    const chosen = builds[pageData.chosen];
    const steps = front(against);
    const low = d3.min([...marked.map(({number}) => builds[number]), ...steps], planned);
    const sure = pageData.high / (pageData.unit === "km" ? 1000 : 60);
    const high = Math.max(sure, d3.max(marked, ({number}) => up(number)));
    const y = d3.scaleLinear([low - 0.05 * (high - low), high + 0.05 * (high - low)], [frame.bottom, frame.top]);
    charts.axes(svg, {
      x: {label: view.axis === "mass" ? "needed at " + pageData.confidence + " % confidence" : "to buy", unit: view.axis === "mass" ? "g" : pageData.currency},
      y: {label: pageData.unit === "km" ? "over ground" : "in the air", unit: pageData.unit}
    }, x, y, frame, BELOW);

    svg.append("rect").attr("class", "doubt").attr("x", frame.left).attr("width", frame.right - frame.left)
      .attr("y", y(sure)).attr("height", y(planned(chosen)) - y(sure));

    const asked = view.limit ? +view.limit.max : null, at = view.limit ? +view.limit.value : null;
    if (at !== null) {
      svg.append("rect").attr("class", "beyond").attr("x", x(at)).attr("width", Math.max(0, frame.right - x(at)))
        .attr("y", frame.top).attr("height", frame.bottom - frame.top);
    }

    const spots = d3.sort(marked, one => ["other", "ranked", "chosen"].indexOf(one.look));
    spots.forEach(({number, look}) => {
      const build = builds[number], px = x(against(build));
      const group = svg.append("g").attr("class", "spot " + look + (build[DOUBTED] ? " hollow" : ""));
      if (look !== "other")
        group.append("path").attr("class", "whisker").attr("d", `M${px},${y(flown(build))}V${y(planned(build))}m-3,0h6`);
      group.append("path").attr("class", "dot").attr("transform", `translate(${px},${y(up(number))})`)
        .attr("d", d3.symbol(...symbol[look])());
    });

    steps.forEach((build, i) => {
      const end = steps[i + 1];
      const right = end ? x(against(end)) : frame.right;
      svg.append("path").attr("class", "edge" + (build[DOUBTED] ? " doubted" : ""))
        .attr("d", `M${x(against(build))},${y(planned(build))}H${right}`);
      if (end) svg.append("path").attr("class", "edge riser").attr("d", `M${right},${y(planned(build))}V${y(planned(end))}`);
    });

    if (at !== null) {
      const group = svg.append("g").attr("class", "mark");
      group.append("line").attr("x1", x(at)).attr("x2", x(at)).attr("y1", frame.top).attr("y2", frame.bottom);
      const words = (view.axis === "mass" ? "cap " + at + " g" : "budget " + pageData.currency + " " + at)
        + (at < asked ? " of " + asked : "");
      const right = x(at) > (frame.left + frame.right) / 2;
      group.append("text").attr("class", "halo").attr("x", x(at) + (right ? -5 : 5)).attr("y", frame.bottom - 20)
        .attr("text-anchor", right ? "end" : "start").text(words);
    }

    const dots = spots.map(({number}) => [x(against(builds[number])), y(up(number))]);
    const label = (number, text, ring) => {
      const build = builds[number], px = x(against(build)), py = y(up(number));
      if (ring) {
        svg.append("g").attr("class", "spot other" + (build[DOUBTED] ? " hollow" : "")).append("circle").attr("class", "dot")
          .attr("cx", px).attr("cy", py).attr("r", 3);
        svg.append("circle").attr("class", "ring").attr("cx", px).attr("cy", py).attr("r", 9);
      }
      const spot = place(px, py, text, frame, dots);
      if (spot) svg.append("text").attr("class", "halo label").attr("x", spot.x).attr("y", spot.y).text(text);
    };
    label(pageData.chosen, picks.get(pageData.chosen) || "row 1", false);
    const other = view.pinned ?? pageData.steepest[view.axis];
    if (other !== undefined && other !== null && other !== pageData.chosen)
      label(other, view.difference(other), true);

    svg.on("click", event => {
      const [px, py] = d3.pointer(event);
      const off = ({number}) => Math.hypot(x(against(builds[number])) - px, y(up(number)) - py);
      const near = d3.least(marked, off);
      if (near && off(near) < 28) pin(near.number);
    });
    return {x, frame, height};
  }

  return {draw, builds, flown, planned, picks, marked, front, across};
})();
