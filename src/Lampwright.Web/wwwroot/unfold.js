// A body at any fold between the flat blank and the finished part.
// A bend of angle A and neutral length L has the neutral radius L/A; at the share t of its angle it is L/(tA), so that the
// neutral fibre keeps its length and t = 0 is the exact blank, t = 1 the exact part.
// Bends follow each other: what stands furthest from the face first, since a wall that stands is in the way of the lip on it.

// A frame is [X, Y, Z, origin] as twelve numbers.
const out = (f, p, o = 1) => [0, 1, 2].map(i => f[i] * p[0] + f[3 + i] * p[1] + f[6 + i] * p[2] + o * f[9 + i]);
const into = (f, p, o = 1) => { const d = [p[0] - o * f[9], p[1] - o * f[10], p[2] - o * f[11]]; return [0, 3, 6].map(k => d[0] * f[k] + d[1] * f[k + 1] + d[2] * f[k + 2]); };
const then = (f, g) => [...out(f, g.slice(0, 3), 0), ...out(f, g.slice(3, 6), 0), ...out(f, g.slice(6, 9), 0), ...out(f, g.slice(9, 12))];
const relative = (f, g) => [...into(f, g.slice(0, 3), 0), ...into(f, g.slice(3, 6), 0), ...into(f, g.slice(6, 9), 0), ...into(f, g.slice(9, 12))];
const turnX = (p, a) => { const s = Math.sin(a), c = Math.cos(a); return [p[0], c * p[1] - s * p[2], s * p[1] + c * p[2]]; };
const turned = (f, a) => [...turnX(f.slice(0, 3), a), ...turnX(f.slice(3, 6), a), ...turnX(f.slice(6, 9), a), ...turnX(f.slice(9, 12), a)];
const identity = [1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0];
const LEAST = 0.004; // of the angle: flat to the eye

export class Unfolding {
  constructor(body) {
    this.id = body.id;
    this.place = body.place;
    this.kind = body.id.startsWith("emitter") ? 2 : body.fold || !/^(fan|sink|driver|item|diffuser|reflector)\./.test(body.id) ? 0 : 1;
    this.faces = body.faces;
    this.canFold = Boolean(body.fold);
    this.frames = new Map((body.fold?.faces ?? []).map(f => [f.id, f.frame]));
    this.bends = (body.fold?.bends ?? []).map(b => this.bend(b)).filter(b => b);
    this.byFlange = new Map(this.bends.map(b => [b.flange, b]));
    const depth = b => { let n = 0; for (let at = b; at; at = this.byFlange.get(at.parent)) n++; return n; };
    this.stages = [...this.bends].sort((a, b) => depth(b) - depth(a));
    this.stages.forEach((b, i) => { b.stage = i; });
    const seat = item => ({ ...item, ...this.seat(item.id, item.p, item.n) });
    this.seatedFaces = body.faces.map(seat);
    this.seatedEdges = body.edges.map(seat);
  }

  bend(b) {
    const parent = this.frames.get(b.parent), child = this.frames.get(b.flange);
    if (!parent || !child) return null;
    const size = Math.abs(b.angle);
    const before = into(b.axis, parent.slice(6, 9), 0), after = into(b.axis, child.slice(6, 9), 0);
    const miss = a => Math.hypot(...turnX(before, a).map((v, i) => v - after[i]));
    return { ...b, turn: miss(size) <= miss(-size) ? size : -size, neutral: b.allowance / size, inParent: relative(parent, b.axis), inAxis: relative(b.axis, child) };
  }

  // Which face or bend a face of the picture hangs on, and where its points lie there.
  seat(id, points, normals) {
    if (!this.canFold) return { on: "", local: null };
    const rest = id.startsWith(this.id + ".") ? id.slice(this.id.length + 1) : id;
    const word = rest.split(/[.\[]/)[0];
    const bend = this.byFlange.get(word);
    const onBend = bend && /(^|\.)bend(\.|\[|$)/.test(rest);
    const frame = onBend ? bend.axis : this.frames.get(word);
    if (!frame) return { on: "", local: null };
    const local = [], turnedNormals = [];
    for (let i = 0; i < points.length; i += 3) {
      const p = into(frame, [points[i], points[i + 1], points[i + 2]]);
      const n = normals ? into(frame, [normals[i], normals[i + 1], normals[i + 2]], 0) : null;
      if (onBend) {
        // About the axis: along it, angle from the bend's beginning, radius.
        let a = Math.atan2(-p[1], p[2]);
        if (a * bend.turn < 0 && Math.abs(a) > Math.PI / 2) a += Math.sign(bend.turn) * 2 * Math.PI;
        local.push(p[0], a, Math.hypot(p[1], p[2]));
        if (n) turnedNormals.push(...turnX(n, -a));
      } else { local.push(...p); if (n) turnedNormals.push(...n); }
    }
    return { on: word, bend: onBend ? bend : null, local, ln: turnedNormals };
  }

  at(share) {
    const placed = this.canFold && share < 0.9999 ? this.posed(share) : null;
    return { faces: this.seatedFaces.map(f => this.moved(f, placed)), edges: this.seatedEdges.map(f => this.moved(f, placed)) };
  }

  // The share of its angle that a bend has at a share of the whole work.
  turnedBy(b, share) { return Math.min(1, Math.max(0, share * this.stages.length - b.stage)); }

  posed(share) {
    const frames = new Map([...this.frames].map(([id, f]) => [id, f])), axes = new Map();
    for (const b of this.bends) { // parents come before children
      const t = Math.max(LEAST, this.turnedBy(b, share));
      const more = b.neutral / t - b.neutral;
      const axisInParent = b.inParent.slice();
      for (let i = 0; i < 3; i++) axisInParent[9 + i] -= more * b.inParent[6 + i];
      const axis = then(frames.get(b.parent), axisInParent);
      const straight = turned(b.inAxis, -b.turn);
      straight[11] += more;
      axes.set(b.flange, { axis, more, t });
      frames.set(b.flange, then(axis, turned(straight, b.turn * t)));
    }
    return { frames, axes };
  }

  moved(item, pose) {
    const p = new Float32Array(item.p.length), n = item.n ? new Float32Array(item.n.length) : null;
    const still = !pose || !item.local;
    const bend = still ? null : item.bend && pose.axes.get(item.on);
    const frame = still ? identity : bend ? bend.axis : pose.frames.get(item.on);
    const source = still ? item.p : item.local, sourceN = still ? item.n : item.ln;
    const whole = then(this.place, frame);
    for (let i = 0; i < source.length; i += 3) {
      let v = [source[i], source[i + 1], source[i + 2]];
      let w = n ? [sourceN[i], sourceN[i + 1], sourceN[i + 2]] : null;
      if (bend) {
        const a = v[1] * bend.t;
        v = turnX([v[0], 0, v[2] + bend.more], a);
        if (w) w = turnX(w, a);
      }
      p.set(out(whole, v), i);
      if (n) n.set(out(whole, w, 0), i);
    }
    return { id: item.id, p, n, t: item.t };
  }
}
