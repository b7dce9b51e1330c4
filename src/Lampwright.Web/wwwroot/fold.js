// The fold in 3D: shaded faces, ink edges, orbit, pan, zoom, pick. Reads the board's scenes (millimetres, permanent ids).
import { Unfolding } from "./unfold.js";
import { Camera } from "./camera.js";
import { Painter } from "./paint.js";

const flatten = parts => { const all = new Float32Array(parts.reduce((n, p) => n + p.length, 0)); let at = 0; for (const p of parts) { all.set(p, at); at += p.length; } return all; };

class FoldView {
  constructor(host, canvas, ref, up) {
    this.host = host; this.canvas = canvas; this.ref = ref;
    this.paint = new Painter(canvas);
    this.camera = new Camera(up);
    this.fold = 1; this.picked = ""; this.hover = ""; this.models = []; this.url = "";
    this.stop = new AbortController();
    this.listen();
    host.choose = id => this.choose(id);
    this.observer = new ResizeObserver(() => this.draw());
    this.observer.observe(canvas);
  }

  async load(url) {
    this.url = url;
    const answer = await fetch(url, { cache: "no-store", signal: this.stop.signal });
    if (!answer.ok || this.url !== url) return false;
    const scene = await answer.json();
    if (this.url !== url) return false; // a newer one was asked for meanwhile
    const first = this.models.length === 0;
    this.models = scene.bodies.map(b => new Unfolding(b));
    this.ids = [...new Set(this.models.flatMap(m => m.faces.map(f => f.id)))];
    this.canFold = this.models.some(m => m.canFold);
    this.host.dataset.folds = this.canFold ? "yes" : "no";
    this.host.stages = this.models.length === 1 ? this.models[0].stages.map(b => ({ flange: b.flange, angle: Math.abs(b.angle) * 180 / Math.PI })) : [];
    this.shape();
    if (first) this.fit(); else { this.camera.follow(this.least, this.most); this.draw(); }
    return this.canFold;
  }

  // Positions at this fold; ids stay, so that a pick means the same at every angle.
  shape() {
    const pos = [], nor = [], ids = [], kinds = [], tri = [], segs = [];
    let base = 0;
    const number = new Map(this.ids.map((id, i) => [id, i + 1]));
    this.least = [Infinity, Infinity, Infinity]; this.most = [-Infinity, -Infinity, -Infinity];
    for (const model of this.models) {
      const { faces, edges } = model.at(this.fold);
      for (const f of faces) {
        const count = f.p.length / 3;
        pos.push(f.p); nor.push(f.n);
        ids.push(new Float32Array(count).fill(number.get(f.id)));
        kinds.push(new Float32Array(count).fill(model.kind));
        const t = new Float32Array(f.t.length); for (let i = 0; i < t.length; i++) t[i] = f.t[i] + base;
        tri.push(t); base += count;
        for (let i = 0; i < f.p.length; i++) { const k = i % 3; if (f.p[i] < this.least[k]) this.least[k] = f.p[i]; if (f.p[i] > this.most[k]) this.most[k] = f.p[i]; }
      }
      for (const e of edges) {
        const n = e.p.length / 3 - 1;
        const s = new Float32Array(Math.max(0, n) * 6);
        for (let i = 0; i < n; i++) s.set(e.p.subarray ? e.p.subarray(i * 3, i * 3 + 6) : e.p.slice(i * 3, i * 3 + 6), i * 6);
        segs.push(s);
      }
    }
    this.paint.upload(flatten(pos), flatten(nor), flatten(ids), flatten(kinds), Uint32Array.from(flatten(tri)), flatten(segs));
  }

  setFold(t) { this.fold = Math.max(0, Math.min(1, t)); this.shape(); this.camera.follow(this.least, this.most); this.draw(); }
  fit() { this.camera.fit(this.least, this.most); this.draw(); }
  view(name) { this.camera.look(name); this.fit(); }
  ortho(is) { this.camera.isOrtho = is; this.draw(); }
  pickId(id) { this.picked = id; this.draw(); }

  draw() {
    if (this.frame) return;
    this.frame = requestAnimationFrame(() => {
      this.frame = 0;
      const scale = Math.min(devicePixelRatio || 1, 2);
      const w = Math.max(1, Math.round(this.canvas.clientWidth * scale)), h = Math.max(1, Math.round(this.canvas.clientHeight * scale));
      if (this.canvas.width !== w || this.canvas.height !== h) { this.canvas.width = w; this.canvas.height = h; }
      const marks = id => id !== 0 && this.ids ? this.isMarked(this.ids[id - 1]) : 0;
      this.paint.draw(this.camera.matrix(w / h), this.camera.eye(), scale, this.ids?.map((_, i) => marks(i + 1)) ?? []);
      this.triad();
      this.host.dataset.drawn = this.models.length > 0 ? "yes" : "no";
    });
  }

  // A picked flange marks its outside, inside and rims; a picked hole its rim.
  isMarked(id) {
    const under = (a, b) => a === b || (b && a.startsWith(b) && /[.\[]/.test(a[b.length]));
    return under(id, this.picked) ? 1 : id === this.hover ? 0.5 : 0;
  }

  triad() {
    const svg = this.host.querySelector(".triad");
    if (!svg) return;
    const axes = this.camera.axes();
    for (const [name, [x, y]] of Object.entries(axes)) {
      const line = svg.querySelector(`.${name}`), text = svg.querySelector(`.t${name}`);
      line.setAttribute("x2", 36 + x * 24); line.setAttribute("y2", 36 - y * 24);
      text.setAttribute("x", 36 + x * 31); text.setAttribute("y", 40 - y * 31);
    }
  }

  idAt(e) {
    const box = this.canvas.getBoundingClientRect();
    const x = (e.clientX - box.left) / box.width, y = 1 - (e.clientY - box.top) / box.height;
    const n = this.paint.pick(this.camera.matrix(this.canvas.width / this.canvas.height), x, y);
    return n > 0 ? this.ids[n - 1] : "";
  }

  listen() {
    const c = this.canvas, on = (name, f, o = {}) => c.addEventListener(name, f, { signal: this.stop.signal, ...o });
    const fingers = new Map();
    let moved = 0, last = 0;
    on("pointerdown", e => { c.setPointerCapture(e.pointerId); fingers.set(e.pointerId, [e.clientX, e.clientY]); moved = 0; c.focus({ preventScroll: true }); });
    on("pointermove", e => {
      const was = fingers.get(e.pointerId);
      if (!was) {
        if (e.pointerType === "mouse" && e.timeStamp - last > 60 && this.ids) {
          last = e.timeStamp;
          const id = this.idAt(e);
          if (id !== this.hover) { this.hover = id; this.name(id || this.picked); this.draw(); }
        }
        return;
      }
      const dx = e.clientX - was[0], dy = e.clientY - was[1];
      moved += Math.abs(dx) + Math.abs(dy);
      if (fingers.size === 2) {
        const other = [...fingers].find(([id]) => id !== e.pointerId)[1];
        const before = Math.hypot(was[0] - other[0], was[1] - other[1]), after = Math.hypot(e.clientX - other[0], e.clientY - other[1]);
        if (before > 1 && after > 1) this.camera.zoom(before / after);
        this.camera.pan(dx / 2, dy / 2, c.clientHeight);
      } else if (e.buttons & 6 || e.shiftKey) this.camera.pan(dx, dy, c.clientHeight);
      else this.camera.orbit(dx * -0.008, dy * 0.008);
      fingers.set(e.pointerId, [e.clientX, e.clientY]);
      this.draw();
    });
    const up = e => {
      const one = fingers.size === 1;
      fingers.delete(e.pointerId);
      if (e.type === "pointerup" && one && moved < 5) this.choose(this.idAt(e));
    };
    on("pointerup", up); on("pointercancel", up);
    on("pointerleave", () => { if (this.hover) { this.hover = ""; this.name(this.picked); this.draw(); } });
    on("contextmenu", e => e.preventDefault());
    // The wheel belongs to the page until the picture has the focus.
    on("wheel", e => { if (document.activeElement !== c && !e.ctrlKey) return; e.preventDefault(); this.camera.zoom(Math.exp(Math.sign(e.deltaY) * 0.12)); this.draw(); }, { passive: false });
    on("keydown", e => {
      const turn = { ArrowLeft: [0.1, 0], ArrowRight: [-0.1, 0], ArrowUp: [0, 0.1], ArrowDown: [0, -0.1] }[e.key];
      if (turn && e.shiftKey) this.camera.pan(turn[0] * -200, turn[1] * -200, c.clientHeight);
      else if (turn) this.camera.orbit(turn[0], turn[1]);
      else if (e.key === "+" || e.key === "=") this.camera.zoom(0.88);
      else if (e.key === "-") this.camera.zoom(1.14);
      else if (e.key === "0" || e.key === "f") { this.fit(); }
      else if (e.key === "Escape" && this.picked) this.choose("");
      else return;
      e.preventDefault(); this.draw();
    });
    on("webglcontextlost", e => { e.preventDefault(); this.host.dataset.webgl = "lost"; });
    addEventListener("lampwright-paper", () => { this.paint.colours(); this.draw(); }, { signal: this.stop.signal });
    matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => { this.paint.colours(); this.draw(); }, { signal: this.stop.signal });
  }

  name(id) { const out = this.host.querySelector(".picked"); if (out) out.textContent = id; }
  choose(id) { this.picked = id; this.name(id); this.draw(); this.ref?.invokeMethodAsync("Picked", id); }

  dispose() { this.stop.abort(); this.observer.disconnect(); if (this.frame) cancelAnimationFrame(this.frame); this.paint.dispose(); }
}

// Gives nothing where the browser has no WebGL2: the page then shows its drawing instead.
export async function open(host, canvas, ref, url, up) {
  let view;
  try { view = new FoldView(host, canvas, ref, up); } catch { host.dataset.webgl = "no"; return null; }
  host.dataset.webgl = "yes";
  await view.load(url);
  return view;
}
