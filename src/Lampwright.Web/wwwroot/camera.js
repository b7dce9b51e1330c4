// Turns about an upright axis, as one walks round a thing on a bench.
const cross = (a, b) => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
const dot = (a, b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const add = (a, b, s = 1) => [a[0] + b[0] * s, a[1] + b[1] * s, a[2] + b[2] * s];
const unit = a => { const l = Math.hypot(...a) || 1; return [a[0] / l, a[1] / l, a[2] / l]; };

export class Camera {
  constructor(up) {
    const axes = { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] };
    const name = up ?? "+z";
    const v = axes[name.at(-1)] ?? axes.z;
    this.up = name.startsWith("-") ? v.map(n => -n) : v;
    // With z up one stands in front, at -y; with y up at +z, so that x always runs to the right.
    this.toViewer = Math.abs(this.up[2]) > 0.5 ? [0, -1, 0] : Math.abs(this.up[1]) > 0.5 ? [0, 0, 1] : [0, 0, 1];
    this.right = unit(cross(this.up, this.toViewer));
    this.yaw = 0.6; this.pitch = 0.55; this.isOrtho = false;
    this.centre = [0, 0, 0]; this.radius = 100; this.distance = 400; this.view = Math.PI * 28 / 180;
  }

  direction() {
    const c = Math.cos(this.pitch);
    return unit(add(add(this.toViewer.map(n => n * c * Math.cos(this.yaw)), this.right, c * Math.sin(this.yaw)), this.up, Math.sin(this.pitch)));
  }

  eye() { return add(this.centre, this.direction(), this.distance); }

  basis() {
    const z = this.direction();
    const x = unit(cross(this.up, z));
    return { x, y: cross(z, x), z };
  }

  look(name) {
    const h = Math.PI / 2;
    [this.yaw, this.pitch] = { front: [0, 0], back: [Math.PI, 0], right: [h, 0], left: [-h, 0], top: [0, h - 1e-4], bottom: [0, -h + 1e-4], corner: [0.6, 0.55] }[name] ?? [0.6, 0.55];
  }

  fit(least, most) {
    if (!least || !Number.isFinite(least[0])) return;
    this.centre = least.map((v, i) => (v + most[i]) / 2);
    this.radius = Math.max(1, Math.hypot(...most.map((v, i) => v - least[i])) / 2);
    this.middle = this.centre;
    this.distance = this.radius / Math.sin(this.view / 2) * 1.04;
  }

  // The thing has grown or shrunk (it unfolds): the same view of it, as near as before.
  follow(least, most) {
    const before = this.radius, near = this.distance;
    const moved = this.middle ? add(this.centre, this.middle, -1) : [0, 0, 0];
    this.fit(least, most);
    this.distance = near * this.radius / before;
    this.centre = add(this.centre, moved);
  }

  orbit(yaw, pitch) { this.yaw += yaw; this.pitch = Math.max(-1.5707, Math.min(1.5707, this.pitch + pitch)); }
  zoom(by) { this.distance = Math.max(this.radius * 0.1, Math.min(this.radius * 40, this.distance * by)); }

  pan(dx, dy, height) {
    const s = 2 * this.distance * Math.tan(this.view / 2) / Math.max(1, height);
    const { x, y } = this.basis();
    this.centre = add(add(this.centre, x, -dx * s), y, dy * s);
  }

  axes() {
    const { x, y } = this.basis();
    return { x: [x[0], y[0]], y: [x[1], y[1]], z: [x[2], y[2]] };
  }

  // Projection times view, column by column.
  matrix(aspect) {
    const { x, y, z } = this.basis(), eye = this.eye();
    const narrow = Math.min(1, aspect); // a tall picture shows the whole width
    // Close about the scene, so that depth tells thin sheet's two sides apart.
    const away = dot(add(eye, this.middle ?? this.centre, -1), z);
    const far = away + this.radius * 1.1, near = this.isOrtho ? away - this.radius * 1.1 : Math.max(this.radius * 0.02, away - this.radius * 1.1);
    const t = Math.tan(this.view / 2) / narrow;
    const v = [x[0], y[0], z[0], 0, x[1], y[1], z[1], 0, x[2], y[2], z[2], 0, -dot(x, eye), -dot(y, eye), -dot(z, eye), 1];
    const p = this.isOrtho
      ? (() => { const s = t * this.distance; return [1 / (s * aspect), 0, 0, 0, 0, 1 / s, 0, 0, 0, 0, -2 / (far - near), 0, 0, 0, -(far + near) / (far - near), 1]; })()
      : [1 / (t * aspect), 0, 0, 0, 0, 1 / t, 0, 0, 0, 0, -(far + near) / (far - near), -1, 0, 0, -2 * far * near / (far - near), 0];
    const m = new Float32Array(16);
    for (let c = 0; c < 4; c++) for (let r = 0; r < 4; r++) for (let k = 0; k < 4; k++) m[c * 4 + r] += p[k * 4 + r] * v[c * 4 + k];
    return m;
  }
}
