// WebGL2: faces in flat paper shades, edges as ink lines of constant width, and a hidden picture of ids for picking.
const FACE = [`#version 300 es
layout(location=0) in vec3 p; layout(location=1) in vec3 n; layout(location=2) in float id; layout(location=3) in float kind;
uniform mat4 m; out vec3 vn; out vec3 vp; flat out int vid; flat out int vkind;
void main() { vn = n; vp = p; vid = int(id + .5); vkind = int(kind + .5); gl_Position = m * vec4(p, 1.); }`, `#version 300 es
precision highp float; precision highp int;
in vec3 vn; in vec3 vp; flat in int vid; flat in int vkind;
uniform vec3 eye, sheet, bought, lit, mark; uniform highp sampler2D marks; uniform bool ids; uniform float dark; out vec4 c;
void main() {
  if (ids) { c = vec4(float(vid & 255), float((vid >> 8) & 255), float((vid >> 16) & 255), 255.) / 255.; return; }
  vec3 n = normalize(vn), e = normalize(eye - vp);
  if (dot(n, e) < 0.) n = -n;
  vec3 key = normalize(e + vec3(.35, -.2, .75));
  float l = .58 + .30 * max(dot(n, key), 0.) + .16 * max(dot(n, e), 0.);
  vec3 base = vkind == 2 ? lit : vkind == 1 ? bought : sheet;
  float k = texelFetch(marks, ivec2(vid & 1023, vid >> 10), 0).r;
  c = vec4(mix(base, mark, k * .75) * mix(l, l * .92, dark), 1.);
}`];
const LINE = [`#version 300 es
layout(location=0) in vec2 corner; layout(location=1) in vec3 a; layout(location=2) in vec3 b;
uniform mat4 m; uniform vec2 size; uniform float width;
void main() {
  vec4 p = m * vec4(a, 1.), q = m * vec4(b, 1.);
  vec2 d = (q.xy / q.w - p.xy / p.w) * size; float l = length(d);
  vec2 side = l > 1e-6 ? vec2(-d.y, d.x) / l : vec2(0.);
  vec4 r = mix(p, q, corner.x);
  r.xy += side * corner.y * width / size * r.w;
  r.z -= 2e-4 * r.w; // in front of the face it belongs to
  gl_Position = r;
}`, `#version 300 es
precision highp float; uniform vec3 ink; out vec4 c; void main() { c = vec4(ink, 1.); }`];

export class Painter {
  constructor(canvas) {
    const gl = canvas.getContext("webgl2", { antialias: true, alpha: true, premultipliedAlpha: true, preserveDrawingBuffer: true });
    if (!gl) throw new Error("no WebGL2");
    this.gl = gl; this.canvas = canvas; this.triangles = 0; this.segments = 0;
    this.face = this.program(FACE); this.line = this.program(LINE);
    this.buffers = ["p", "n", "id", "kind", "t", "s", "q"].reduce((all, k) => ({ ...all, [k]: gl.createBuffer() }), {});
    gl.bindBuffer(gl.ARRAY_BUFFER, this.buffers.q);
    gl.bufferData(gl.ARRAY_BUFFER, new Float32Array([0, -1, 1, -1, 0, 1, 1, 1]), gl.STATIC_DRAW);
    this.marks = gl.createTexture();
    this.colours();
  }

  program([vertex, fragment]) {
    const gl = this.gl, p = gl.createProgram();
    for (const [kind, text] of [[gl.VERTEX_SHADER, vertex], [gl.FRAGMENT_SHADER, fragment]]) {
      const s = gl.createShader(kind);
      gl.shaderSource(s, text); gl.compileShader(s);
      if (!gl.getShaderParameter(s, gl.COMPILE_STATUS)) throw new Error(gl.getShaderInfoLog(s));
      gl.attachShader(p, s);
    }
    gl.linkProgram(p);
    if (!gl.getProgramParameter(p, gl.LINK_STATUS)) throw new Error(gl.getProgramInfoLog(p));
    const at = name => gl.getUniformLocation(p, name);
    return { p, at: Object.fromEntries(["m", "eye", "sheet", "bought", "lit", "mark", "marks", "ids", "dark", "size", "width", "ink"].map(n => [n, at(n)])) };
  }

  colours() {
    const style = getComputedStyle(this.canvas);
    const colour = name => { const h = style.getPropertyValue(name).trim(); return [1, 3, 5].map(i => parseInt(h.slice(i, i + 2), 16) / 255); };
    this.sheet = colour("--fold-sheet"); this.bought = colour("--fold-bought"); this.lit = colour("--light"); this.mark = colour("--light"); this.ink = colour("--ink");
    this.dark = this.ink[0] > 0.5 ? 1 : 0;
  }

  upload(p, n, id, kind, t, s) {
    const gl = this.gl, b = this.buffers;
    for (const [buffer, data] of [[b.p, p], [b.n, n], [b.id, id], [b.kind, kind], [b.s, s]]) { gl.bindBuffer(gl.ARRAY_BUFFER, buffer); gl.bufferData(gl.ARRAY_BUFFER, data, gl.DYNAMIC_DRAW); }
    gl.bindBuffer(gl.ELEMENT_ARRAY_BUFFER, b.t); gl.bufferData(gl.ELEMENT_ARRAY_BUFFER, t, gl.DYNAMIC_DRAW);
    this.triangles = t.length; this.segments = s.length / 6;
  }

  attribute(at, buffer, size, stride = 0, offset = 0, each = 0) {
    const gl = this.gl;
    gl.bindBuffer(gl.ARRAY_BUFFER, buffer); gl.enableVertexAttribArray(at);
    gl.vertexAttribPointer(at, size, gl.FLOAT, false, stride, offset); gl.vertexAttribDivisor(at, each);
  }

  faces(matrix, eye, ids) {
    const gl = this.gl, b = this.buffers, u = this.face.at;
    gl.useProgram(this.face.p);
    this.attribute(0, b.p, 3); this.attribute(1, b.n, 3); this.attribute(2, b.id, 1); this.attribute(3, b.kind, 1);
    gl.bindBuffer(gl.ELEMENT_ARRAY_BUFFER, b.t);
    gl.uniformMatrix4fv(u.m, false, matrix); gl.uniform3fv(u.eye, eye);
    gl.uniform3fv(u.sheet, this.sheet); gl.uniform3fv(u.bought, this.bought); gl.uniform3fv(u.lit, this.lit); gl.uniform3fv(u.mark, this.mark);
    gl.uniform1i(u.ids, ids ? 1 : 0); gl.uniform1f(u.dark, this.dark); gl.uniform1i(u.marks, 0);
    gl.activeTexture(gl.TEXTURE0); gl.bindTexture(gl.TEXTURE_2D, this.marks);
    gl.drawElements(gl.TRIANGLES, this.triangles, gl.UNSIGNED_INT, 0);
  }

  setMarks(marks) {
    const gl = this.gl, rows = Math.max(1, Math.ceil((marks.length + 1) / 1024)), data = new Uint8Array(rows * 1024);
    marks.forEach((k, i) => { data[i + 1] = k * 255; });
    gl.bindTexture(gl.TEXTURE_2D, this.marks); gl.pixelStorei(gl.UNPACK_ALIGNMENT, 1);
    gl.texImage2D(gl.TEXTURE_2D, 0, gl.R8, 1024, rows, 0, gl.RED, gl.UNSIGNED_BYTE, data);
    gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_MIN_FILTER, gl.NEAREST); gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_MAG_FILTER, gl.NEAREST);
  }

  draw(matrix, eye, scale, marks) {
    const gl = this.gl, { width, height } = this.canvas;
    gl.bindFramebuffer(gl.FRAMEBUFFER, null);
    gl.viewport(0, 0, width, height); gl.clearColor(0, 0, 0, 0); gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT); gl.enable(gl.DEPTH_TEST);
    if (this.triangles === 0) return;
    this.setMarks(marks);
    gl.enable(gl.POLYGON_OFFSET_FILL); gl.polygonOffset(1, 1);
    this.faces(matrix, eye, false);
    gl.disable(gl.POLYGON_OFFSET_FILL);
    const u = this.line.at;
    gl.useProgram(this.line.p);
    gl.disableVertexAttribArray(3);
    this.attribute(0, this.buffers.q, 2); this.attribute(1, this.buffers.s, 3, 24, 0, 1); this.attribute(2, this.buffers.s, 3, 24, 12, 1);
    gl.uniformMatrix4fv(u.m, false, matrix); gl.uniform2f(u.size, width, height); gl.uniform1f(u.width, 1.35 * scale); gl.uniform3fv(u.ink, this.ink);
    gl.drawArraysInstanced(gl.TRIANGLE_STRIP, 0, 4, this.segments);
  }

  // The id at a place of the picture (0 to 1 from the lower left), drawn once into a picture of its own.
  pick(matrix, x, y) {
    const gl = this.gl, w = 512, h = Math.max(1, Math.round(512 * this.canvas.height / this.canvas.width));
    if (!this.hidden || this.hidden.h !== h) {
      if (this.hidden) { gl.deleteFramebuffer(this.hidden.f); gl.deleteRenderbuffer(this.hidden.c); gl.deleteRenderbuffer(this.hidden.d); }
      const f = gl.createFramebuffer(), c = gl.createRenderbuffer(), d = gl.createRenderbuffer();
      gl.bindRenderbuffer(gl.RENDERBUFFER, c); gl.renderbufferStorage(gl.RENDERBUFFER, gl.RGBA8, w, h);
      gl.bindRenderbuffer(gl.RENDERBUFFER, d); gl.renderbufferStorage(gl.RENDERBUFFER, gl.DEPTH_COMPONENT24, w, h);
      gl.bindFramebuffer(gl.FRAMEBUFFER, f);
      gl.framebufferRenderbuffer(gl.FRAMEBUFFER, gl.COLOR_ATTACHMENT0, gl.RENDERBUFFER, c); gl.framebufferRenderbuffer(gl.FRAMEBUFFER, gl.DEPTH_ATTACHMENT, gl.RENDERBUFFER, d);
      this.hidden = { f, c, d, h };
    }
    gl.bindFramebuffer(gl.FRAMEBUFFER, this.hidden.f);
    gl.viewport(0, 0, w, h); gl.disable(gl.BLEND); gl.clearColor(0, 0, 0, 0); gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT); gl.enable(gl.DEPTH_TEST);
    this.faces(matrix, [0, 0, 0], true);
    const pixel = new Uint8Array(4);
    gl.readPixels(Math.min(w - 1, Math.floor(x * w)), Math.min(h - 1, Math.floor(y * h)), 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, pixel);
    gl.bindFramebuffer(gl.FRAMEBUFFER, null);
    return pixel[3] === 0 ? 0 : pixel[0] + pixel[1] * 256 + pixel[2] * 65536;
  }

  dispose() { this.gl.getExtension("WEBGL_lose_context")?.loseContext(); }
}
