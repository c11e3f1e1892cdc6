// Puts the drawing into the page itself, so that its plants can be dragged or moved by keys, and shows the slider.
// Without this the drawing is a picture, and places are told in numbers.
(() => {
  const STEP = 0.1;
  const LARGE_STEP = 0.5;
  let focusNext = "";

  const setUp = () => {
    const slide = document.querySelector(".year-slide");
    if (slide) slide.hidden = false;
    const frame = document.querySelector(".bed-drawing:not([data-live])");
    if (frame) fill(frame);
  };

  const fill = async (frame) => {
    frame.dataset.live = "yes";
    const answer = await fetch(frame.dataset.source);
    if (!answer.ok || !frame.isConnected) return;
    const parsed = new DOMParser().parseFromString(await answer.text(), "image/svg+xml");
    const svg = document.adoptNode(parsed.documentElement);
    // A picture has no parts that can be picked; a group has.
    svg.setAttribute("role", "group");
    svg.removeAttribute("width");
    svg.removeAttribute("height");
    for (const spot of svg.querySelectorAll(".spot")) prepare(svg, spot, frame);
    frame.replaceChildren(svg);
    const help = document.querySelector(".drag-help");
    if (help) help.hidden = false;
    if (focusNext) svg.querySelector(`[data-spot="${focusNext}"]`)?.focus({ preventScroll: true });
    focusNext = "";
    frame.dataset.ready = "yes";
  };

  const prepare = (svg, spot, frame) => {
    const handle = document.createElementNS("http://www.w3.org/2000/svg", "circle");
    handle.setAttribute("r", "2.4");
    handle.setAttribute("class", "handle");
    spot.prepend(handle);
    spot.setAttribute("tabindex", "0");
    spot.setAttribute("role", "button");
    spot.setAttribute("aria-label", spot.dataset.name);
    let waiting = 0;
    spot.addEventListener("pointerdown", (event) => drag(svg, spot, frame, event));
    spot.addEventListener("keydown", (event) => {
      const way = { ArrowUp: [0, 1], ArrowDown: [0, -1], ArrowLeft: [-1, 0], ArrowRight: [1, 0] }[event.key];
      if (!way) return;
      event.preventDefault();
      const step = event.shiftKey ? LARGE_STEP : STEP;
      place(svg, spot, Number(spot.dataset.x) + way[0] * step, Number(spot.dataset.y) + way[1] * step);
      clearTimeout(waiting);
      waiting = setTimeout(() => keep(spot, frame), 500);
    });
  };

  // Metres east and north of the bed's middle, from millimetres on the sheet and back.
  const place = (svg, spot, east, north) => {
    spot.dataset.x = east.toFixed(3);
    spot.dataset.y = north.toFixed(3);
    const mm = 1000 / Number(svg.dataset.scale);
    const x = (east - Number(svg.dataset.west)) * mm;
    const y = Number(svg.dataset.top) + (Number(svg.dataset.north) - north) * mm;
    const crown = svg.querySelector(`[data-crown="${spot.dataset.spot}"]`);
    for (const part of crown ? [spot, crown] : [spot]) part.setAttribute("transform", `translate(${x.toFixed(2)} ${y.toFixed(2)})`);
  };

  const drag = (svg, spot, frame, event) => {
    if (event.button !== 0) return;
    event.preventDefault();
    spot.focus({ preventScroll: true });
    spot.setPointerCapture(event.pointerId);
    const metres = (e) => {
      const point = new DOMPoint(e.clientX, e.clientY).matrixTransform(svg.getScreenCTM().inverse());
      const mm = 1000 / Number(svg.dataset.scale);
      return [point.x / mm, -point.y / mm];
    };
    const begun = metres(event);
    const from = [Number(spot.dataset.x), Number(spot.dataset.y)];
    let moved = false;
    const move = (e) => {
      const now = metres(e);
      moved = moved || Math.hypot(now[0] - begun[0], now[1] - begun[1]) > 0.02;
      place(svg, spot, from[0] + now[0] - begun[0], from[1] + now[1] - begun[1]);
    };
    const end = (e) => {
      spot.removeEventListener("pointermove", move);
      spot.removeEventListener("pointerup", end);
      spot.removeEventListener("pointercancel", end);
      if (e.type === "pointercancel") place(svg, spot, from[0], from[1]);
      else if (moved) keep(spot, frame);
    };
    spot.addEventListener("pointermove", move);
    spot.addEventListener("pointerup", end);
    spot.addEventListener("pointercancel", end);
  };

  const keep = (spot, frame) => {
    focusNext = spot.dataset.spot;
    window.htmx.ajax("POST", frame.dataset.move, {
      target: "#drawing-plan",
      swap: "outerHTML",
      values: { csrf: frame.dataset.csrf, year: frame.dataset.year, spot: spot.dataset.spot, east: spot.dataset.x, north: spot.dataset.y },
    });
  };

  // The slider asks with its own value and keeps the number field in step; what is refused is shown as well.
  document.addEventListener("htmx:configRequest", (event) => {
    if (event.detail.elt.id === "year-slider") {
      event.detail.parameters.year = event.detail.elt.value;
      document.getElementById("year").value = event.detail.elt.value;
    }
  });
  document.addEventListener("htmx:beforeSwap", (event) => {
    if (event.detail.xhr.status === 422) {
      event.detail.shouldSwap = true;
      event.detail.isError = false;
    }
  });
  document.addEventListener("htmx:afterSwap", setUp);
  setUp();
})();
