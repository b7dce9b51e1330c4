// What a page of the board needs beyond its markup: the paper's colour, keys, links that lead to a field, values under the pointer.
(() => {
  "use strict";
  const root = document.documentElement;
  const store = (() => { try { return window.localStorage; } catch { return null; } })();
  const paper = store?.getItem("lampwright-paper");
  if (paper === "light" || paper === "dark") root.dataset.paper = paper;

  const isDark = () => root.dataset.paper ? root.dataset.paper === "dark" : matchMedia("(prefers-color-scheme: dark)").matches;
  let board = null;
  let unsaved = false;

  const open = el => { for (let d = el.closest("details"); d; d = d.parentElement?.closest("details")) d.open = true; };

  const follow = () => {
    const field = new URLSearchParams(location.search).get("field");
    const target = field ? document.getElementById("given:" + field) : location.hash ? document.getElementById(location.hash.slice(1)) : null;
    if (!target) return;
    open(target);
    target.scrollIntoView({ block: field ? "center" : "start" });
    target.focus({ preventScroll: true });
  };

  // A finding and its mark in the drawing lead to each other: what is led to is marked for a while and has the focus.
  const marks = key => [...document.querySelectorAll(`.sketch.blank svg [data-id="${CSS.escape(key)}"]`)];
  const show = (els, at) => {
    document.querySelectorAll(".led-to").forEach(e => e.classList.remove("led-to"));
    els.forEach(e => e.classList.add("led-to"));
    open(at);
    at.scrollIntoView({ block: "center" });
    at.focus?.({ preventScroll: true });
  };
  const found = key => { const all = marks(key); if (all.length > 0) show(all, all.find(m => m.tabIndex === 0) ?? all[0]); return all.length > 0; };
  const lead = key => {
    const item = document.getElementById("found:" + key);
    if (item) show([item], item);
  };
  const point = el => {
    const id = el?.dataset.id;
    if (!id || !el.closest(".blank svg")) return false;
    if (id.includes("@")) lead(id); else { const fold = document.querySelector(".fold[data-webgl=yes]"); fold?.choose?.(id); fold?.scrollIntoView({ block: "nearest" }); }
    return true;
  };

  window.lampwright = {
    live(ref) { board = ref; document.body.dataset.live = "yes"; narrow(); },
    unsaved(is) { unsaved = is; },
    follow,
    folds: host => host?.dataset.folds === "yes",
    stages: host => host?.stages ?? [],
    found,
  };

  // On a phone the ledger begins folded to its one line.
  const narrow = () => {
    if (!matchMedia("(max-width: 900px)").matches) return;
    document.querySelector(".ledger .glance")?.removeAttribute("open");
    document.querySelector("nav.stations .here")?.scrollIntoView({ inline: "center", block: "nearest" });
  };

  addEventListener("beforeunload", e => { if (unsaved) e.preventDefault(); });

  document.addEventListener("click", e => {
    if (point(e.target.closest?.("[data-id]"))) return;
    const to = e.target.closest?.("[data-found]")?.dataset.found;
    if (to && found(to)) { e.preventDefault(); e.stopPropagation(); return; }
    const act = e.target.closest?.("[data-act]")?.dataset.act;
    if (act === "theme") {
      root.dataset.paper = isDark() ? "light" : "dark";
      store?.setItem("lampwright-paper", root.dataset.paper);
      dispatchEvent(new Event("lampwright-paper"));
    }
  });

  document.addEventListener("keydown", e => {
    if ((e.key === "Enter" || e.key === " ") && point(e.target.closest?.("svg [data-id]"))) { e.preventDefault(); return; }
    if (!(e.ctrlKey || e.metaKey) || e.altKey) return;
    const key = e.key.toLowerCase();
    const act = key === "s" ? "save" : key === "z" ? (e.shiftKey ? "redo" : "undo") : key === "y" ? "redo" : "";
    if (!act) return;
    const here = document.activeElement;
    if (act !== "save" && here?.getAttribute?.("aria-invalid") === "true") return; // a text that was not taken is the input's own to undo
    e.preventDefault();
    if (act === "save" && here?.matches?.("input")) here.dispatchEvent(new Event("change", { bubbles: true }));
    board?.invokeMethodAsync("Key", act);
  });

  // Values under the pointer: the nearest readout of a chart says what it is.
  const hits = plot => [...plot.querySelectorAll(".lw-readout")].filter(h => h.getClientRects().length > 0);

  const say = (plot, hit) => {
    const out = plot.querySelector(".say");
    plot.querySelectorAll(".near").forEach(h => h.classList.remove("near"));
    if (!hit) { out.textContent = ""; return; }
    hit.classList.add("near");
    out.textContent = (hit.dataset.series ? hit.dataset.series + ", " : "") + hit.dataset.x + ": " + hit.dataset.text;
    const box = plot.getBoundingClientRect(), at = hit.getBoundingClientRect();
    const x = at.x + at.width / 2 - box.x;
    out.classList.toggle("left", x > box.width * 0.55);
    out.style.left = `${x}px`;
    out.style.top = `${Math.max(26, at.y - box.y + 4)}px`;
  };

  document.addEventListener("pointermove", e => {
    const plot = e.target.closest?.("[data-plot]");
    if (!plot) return;
    let best = null, least = Infinity;
    for (const h of hits(plot)) {
      const b = h.getBoundingClientRect();
      const dx = b.x + b.width / 2 - e.clientX, dy = Math.max(b.top - e.clientY, e.clientY - b.bottom, 0);
      const d = dx * dx * 4 + dy * dy;
      if (d < least) { least = d; best = h; }
    }
    say(plot, best);
  });

  document.addEventListener("pointerout", e => {
    const plot = e.target.closest?.("[data-plot]");
    if (plot && !plot.contains(e.relatedTarget)) say(plot, null);
  });

  document.addEventListener("focusout", e => { if (e.target.matches?.("[data-plot]")) say(e.target, null); });

  document.addEventListener("keydown", e => {
    const plot = e.target.matches?.("[data-plot]") ? e.target : null;
    const step = { ArrowRight: 1, ArrowLeft: -1, ArrowDown: 1, ArrowUp: -1 }[e.key];
    if (!plot || !step) return;
    e.preventDefault();
    const all = hits(plot);
    if (all.length === 0) return;
    const now = all.findIndex(h => h.classList.contains("near"));
    say(plot, all[now < 0 ? 0 : (now + step + all.length) % all.length]);
  });
})();
