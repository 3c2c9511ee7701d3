// The ranking's page: one build is pinned beside the chosen one, in chart, panel and tables alike, by a tap on a mark, a
// row or a limit. The state stands behind # in the address, so that a page is sent as it is seen.
(() => {
  const builds = trade.builds;
  const chosen = builds[pageData.chosen];
  const limits = {price: document.getElementById("limit-price"), mass: document.getElementById("limit-mass")};
  const hasLimits = limits.price !== null;
  const anchors = new Map(pageData.anchors);
  const first = trade.picks.get(pageData.chosen) || "first";
  const table = document.querySelector("table.ranked");
  const sort = document.getElementById("sort");
  const state = {axis: "price", pinned: null, sort: "rank", falling: false, open: []};

  // --- numbers, told as the command tells them ----------------------------------------------------
  const halves = (milliseconds, round) => (round(milliseconds / 3e4) / 2).toFixed(1);
  const far = 1e7;
  const kilometres = millimetres => millimetres >= far ? (millimetres / 1e6).toFixed(1) : (Math.round(millimetres / 5e4) / 20).toFixed(2);
  const atMost = millimetres => {
    const step = millimetres >= far ? 1e5 : 5e4;
    return kilometres(Math.floor(millimetres / step) * step);
  };
  const isFar = pageData.unit === "km";
  const told = {
    planned: build => isFar ? atMost(build[PLANNED]) : halves(build[PLANNED], Math.floor),
    flown: build => isFar ? kilometres(build[FLOWN]) : halves(build[FLOWN], Math.round),
    price: build => Math.round(build[CENTS] / 100).toFixed(0)
  };
  const signed = (value, decimals, before = "") => {
    const text = Math.abs(value).toFixed(decimals);
    return +text === 0 ? "0" : (value > 0 ? "+" : "\u2212") + before + text;
  };
  const decimals = 1;
  const names = build => pageData.sets[build[MAIN]].map(i => pageData.parts[i][1]);
  const parts = build => [...pageData.sets[build[MAIN]], ...pageData.sets[build[OTHERS]]].map(i => pageData.parts[i]);
  const typed = build => parts(build).map(part => part[2] + (part[3] > 1 ? "*" + part[3] : "")).join(",");
  const money = build => pageData.currency + " " + told.price(build);
  const lost = build => signed(told.planned(build) - told.planned(chosen), decimals) + "\u00a0" + pageData.unit;
  const cost = build => signed(told.price(build) - told.price(chosen), 0, pageData.currency + "\u00a0");
  const weight = build => signed(build[GRAMS].toFixed(0) - chosen[GRAMS].toFixed(0), 0) + "\u00a0g";
  const doubted = build => build[DOUBTED] ? " ?" : "";
  const word = number => trade.picks.get(number) || (pageData.ranked.includes(number) ? "row " + (pageData.ranked.indexOf(number) + 1) : "");

  // --- what the limits let in, the best first: what the command would pick first, where that is no flight; else the longest
  // to plan with, believed if anything is; of equals the cheaper, then as they stand, which is the order of rankings --------
  const order = pageData.front && pageData.front.order;
  const best = order || d3.sort(d3.range(builds.length), i => builds[i][DOUBTED], i => -builds[i][PLANNED], i => builds[i][CENTS]);
  function within() {
    const most = Math.round(limits.mass.value * 1000) - (pageData.front.strict ? 1 : 0);
    const cents = Math.round(limits.price.value * 100);
    return best.find(i => builds[i][NEEDED] <= most && builds[i][CENTS] <= cents) ?? null;
  }
  const none = order ? "No build keeps both" : "No build of the front keeps both";
  const isMoved = () => hasLimits && Object.values(limits).some(input => input.value !== input.max);
  const limited = () => "At most " + pageData.currency + " " + limits.price.value + " and "
    + (pageData.front.strict ? "below " : "at most ") + limits.mass.value + " g";
  function edges(best) {
    const said = [];
    const front = pageData.front;
    if (limits.mass.value === limits.mass.max) said.push("The mass cap is the scenario's own: heavier builds were not looked for.");
    if (limits.price.value === limits.price.max) said.push(front.hasBudget
      ? "The budget is the scenario's own: dearer builds were not looked for."
      : "No budget was asked for: nothing here costs more.");
    if (order) {
      // Builds come in their order: whatever is missing comes after those that are here.
      if (best === null) said.push(front.isWhole
        ? "Proven: nothing that is believed keeps both; whether anything too good to be true does was not looked for."
        : "Not all was looked into: whether any keeps both is not known.");
      return said;
    }
    if (best !== null && !(builds[best][PLANNED] >= front.downToFigure))
      said.push("The front is " + front.downTo + ": something better within these limits may have been missed.");
    if (best === null) said.push("The front is " + front.downTo + ": whether anything that flies less, or is too good to be true, keeps both was not looked for.");
    return said;
  }

  // --- the panel: differences against the chosen one, flight and price first ------------------------
  const panel = document.getElementById("beside");
  function differences(build, number) {
    const rows = [
      ["plan on, " + pageData.unit, told.planned(chosen), told.planned(build), signed(told.planned(build) - told.planned(chosen), decimals)],
      ["expect, " + pageData.unit, told.flown(chosen), told.flown(build), signed(told.flown(build) - told.flown(chosen), decimals)],
      [pageData.currency, told.price(chosen), told.price(build), signed(told.price(build) - told.price(chosen), 0)],
      ["g", chosen[GRAMS].toFixed(0), build[GRAMS].toFixed(0), signed(build[GRAMS].toFixed(0) - chosen[GRAMS].toFixed(0), 0)],
      ["T/W", chosen[THRUST].toFixed(1), build[THRUST].toFixed(1), signed(build[THRUST].toFixed(1) - chosen[THRUST].toFixed(1), 1)],
      ["W in flight", chosen[WATTS].toFixed(0), build[WATTS].toFixed(0), signed(build[WATTS].toFixed(0) - chosen[WATTS].toFixed(0), 0)]
    ];
    const swapped = [];
    const has = new Map(parts(chosen).map(part => [part[0], part]));
    const others = new Map(parts(build).map(part => [part[0], part]));
    new Set([...has.keys(), ...others.keys()]).forEach(role => {
      const one = has.get(role), other = others.get(role);
      if (!one || !other || one[2] !== other[2])
        swapped.push([role, one ? one[1] : "none", other ? other[1] : "none"]);
    });
    const inFull = pageData.anchors.map(([at]) => at);
    const left = inFull.indexOf(pageData.chosen), right = inFull.indexOf(number);
    if (left >= 0 && right >= 0) {
      pageData.compare
        .filter(([label, values]) => !has.has(label) && !others.has(label) && values[left] !== values[right])
        .forEach(([label, values]) => swapped.push([label, values[left], values[right]]));
    }
    return {rows, swapped};
  }

  function showPanel() {
    panel.replaceChildren();
    panel.dataset.build = state.pinned === null ? "" : typed(builds[state.pinned]);
    if (state.pinned === null) {
      panel.append(element("p", state.none ? none + "." : hasLimits ? "Nothing yet: tap a mark, a row, or move the slider." : "Nothing yet: tap a mark or a row."));
    } else {
      const build = builds[state.pinned], known = word(state.pinned), isChosen = state.pinned === pageData.chosen;
      panel.append(element("p", names(build).join(", ") + doubted(build), {class: "named"}));
      const differ = differences(build, state.pinned);
      const both = ["the " + first, known || "this"];
      const sides = element("div", "", {class: "sides"});
      sides.append(
        tableOf("Differences against the " + first, ["", ...both, "difference"].map((title, i) => [title, i > 0]), differ.rows, false),
        tableOf("What is another", ["", ...both].map(title => [title, false]), differ.swapped));
      panel.append(isChosen ? element("p", "That is the " + first + " itself.") : sides);
      if (build[DOUBTED]) panel.append(element("p", "? too good to be true: better than such aircraft are known to fly; distrust it until one is measured."));
      if (anchors.has(state.pinned)) {
        const link = element("a", "All of it", {href: "#" + anchors.get(state.pinned)});
        const said = element("p", "");
        said.append(link);
        panel.append(said);
      }
      const fold = element("details", "");
      fold.append(element("summary", "To type behind assess SCENARIO"), element("code", typed(build)));
      const free = element("button", "Put it away", {type: "button", class: "button"});
      free.addEventListener("click", () => pin(null));
      panel.append(fold, free);
    }
    if (state.looked) edges(state.pinned).forEach(text => panel.append(element("p", text, {class: "edge"})));
  }

  const status = document.getElementById("status");
  function showStatus() {
    if (state.none) {
      status.textContent = limited() + ": " + none.toLowerCase() + ".";
    } else if (state.pinned === null) {
      status.textContent = "Shaded: how sure the " + first + " is. Tap a mark.";
    } else {
      const build = builds[state.pinned];
      const others = names(build).filter(name => !names(chosen).includes(name));
      status.textContent = (state.looked ? limited() + ", " + pageData.front.best + ": " : "") + (state.pinned === pageData.chosen
        ? "the " + first + " itself." : [lost(build), cost(build), weight(build)].join(", ")
        + ": " + (others.length ? others : ["the same main parts"]).join(", ") + doubted(build) + ".");
    }
  }

  // --- the chart with its limit ---------------------------------------------------------------------
  const thumb = 24;
  const redraw = charts.draws("trade", (box, width) => {
    const limit = limits[state.axis];
    const drawn = trade.draw(box, width, {
      axis: state.axis, pinned: state.pinned, limit,
      difference: number => {
        const build = builds[number];
        return (state.axis === "mass" ? weight(build) : cost(build)) + ", " + lost(build);
      }
    }, number => pin(number));
    if (!limit) return;
    const scale = box.clientWidth / width;
    limit.style.left = scale * drawn.x(+limit.min) - thumb / 2 + "px";
    limit.style.width = scale * (drawn.x(+limit.max) - drawn.x(+limit.min)) + thumb + "px";
    limit.style.top = scale * drawn.frame.bottom - thumb / 2 + "px";
  });

  // --- sorting, best first --------------------------------------------------------------------------
  const risesLast = {plan_min: true, plan_km: true, flight_min: true, range_km: true, thrust_over_weight: true};
  function showSorted() {
    const heads = [...table.tHead.rows[0].cells];
    const column = heads.findIndex(head => head.dataset.key === state.sort);
    if (column < 0) return;
    heads.forEach(head => head.removeAttribute("aria-sort"));
    heads[column].setAttribute("aria-sort", state.falling ? "descending" : "ascending");
    const numbers = heads[column].classList.contains("num");
    const value = row => row.cells[column].dataset.value;
    const rank = row => row.cells[0].dataset.value;
    const way = state.falling ? -1 : 1;
    [...table.tBodies[0].rows]
      .sort((a, b) => way * (numbers ? value(a) - value(b) : value(a).localeCompare(value(b), "en")) || rank(a) - rank(b))
      .forEach(row => table.tBodies[0].append(row));
    sort.value = state.sort;
  }
  function sortBy(key, isAgain) {
    state.falling = isAgain && state.sort === key ? !state.falling : Boolean(risesLast[key]);
    state.sort = key;
    showSorted();
    remember();
  }
  table.tHead.querySelectorAll("button").forEach(button =>
    button.addEventListener("click", () => sortBy(button.closest("th").dataset.key, true)));
  sort.addEventListener("change", () => sortBy(sort.value, false));

  // --- everything at once ----------------------------------------------------------------------------
  function show() {
    document.getElementById("trade-title").textContent = pageData.titles[state.axis];
    Object.entries(limits).forEach(([axis, input]) => {
      if (!input) return;
      input.hidden = axis !== state.axis;
      input.setAttribute("aria-valuetext", axis === "price" ? pageData.currency + " " + input.value : input.value + " g");
    });
    document.querySelectorAll("input[name=against]").forEach(radio => { radio.checked = radio.value === state.axis; });
    document.querySelectorAll("tr[data-build]").forEach(row => {
      const isPinned = Number(row.dataset.build) === state.pinned;
      row.classList.toggle("pinned", isPinned);
      row.querySelector(".pin").setAttribute("aria-pressed", isPinned);
    });
    showPanel();
    showStatus();
    redraw();
  }

  function pin(number, looked = false) {
    state.pinned = number;
    state.looked = looked;
    state.none = looked && number === null;
    show();
    remember();
  }

  document.querySelectorAll("tr[data-build]").forEach(row => row.addEventListener("click", event => {
    if (event.target.closest("a")) return;
    const number = Number(row.dataset.build);
    pin(number === state.pinned ? null : number);
  }));
  document.querySelectorAll("input[name=against]").forEach(radio => radio.addEventListener("change", () => {
    state.axis = radio.value;
    show();
    remember();
  }));
  if (hasLimits) Object.values(limits).forEach(input => input.addEventListener("input", () => pin(within(), true)));

  // --- the numbers of the chart ----------------------------------------------------------------------
  const numbers = document.getElementById("trade-numbers");
  numbers.parentElement.addEventListener("toggle", () => {
    if (numbers.firstChild) return;
    const columns = [["build", false], ["plan on, " + pageData.unit, true], ["expect, " + pageData.unit, true], ["g", true], [pageData.currency, true]];
    numbers.append(tableOf("One build for each set of main parts", columns, trade.marked.map(({number}) => {
      const build = builds[number];
      return [names(build).join(", ") + doubted(build), told.planned(build), told.flown(build), build[GRAMS].toFixed(0), told.price(build)];
    })));
  });

  // --- the address -----------------------------------------------------------------------------------
  const folds = () => [...document.querySelectorAll("details[id]")];
  const opened = () => folds().filter(fold => fold.open).map(fold => fold.id).join(".");
  const atFirst = opened();
  function remember() {
    const said = new URLSearchParams();
    if (state.axis !== "price") said.set("against", state.axis);
    if (isMoved()) { said.set("budget", limits.price.value); said.set("cap", limits.mass.value); }
    if (state.looked) said.set("looked", "1");
    if (state.pinned !== null) said.set("beside", state.pinned);
    if (state.sort !== "rank" || state.falling) said.set("sort", (state.falling ? "-" : "") + state.sort);
    const open = opened();
    if (open !== atFirst) said.set("open", open);
    const text = said.toString();
    history.replaceState(null, "", text ? "#" + text : location.pathname + location.search);
  }

  function recall() {
    const hash = decodeURIComponent(location.hash.slice(1));
    details.have(hash);
    const target = hash && !hash.includes("=") && document.getElementById(hash);
    if (target) {
      for (let fold = target.closest("details"); fold; fold = fold.parentElement.closest("details")) fold.open = true;
      target.scrollIntoView();
      return;
    }
    const said = new URLSearchParams(location.hash.slice(1));
    state.axis = said.get("against") === "mass" ? "mass" : "price";
    if (hasLimits) {
      limits.price.value = said.get("budget") ?? limits.price.max;
      limits.mass.value = said.get("cap") ?? limits.mass.max;
    }
    const beside = said.has("beside") ? Number(said.get("beside")) : null;
    state.pinned = beside !== null && builds[beside] ? beside : null;
    state.looked = hasLimits && said.has("looked");
    state.none = state.looked && state.pinned === null;
    const by = said.get("sort") ?? "rank";
    state.falling = by.startsWith("-");
    state.sort = by.replace(/^-/, "");
    const open = (said.get("open") ?? atFirst).split(".");
    open.forEach(details.have);
    folds().forEach(fold => { fold.open = open.includes(fold.id); });
    showSorted();
    show();
  }
  document.addEventListener("toggle", remember, true);
  addEventListener("hashchange", recall);
  recall();
  show();
})();
