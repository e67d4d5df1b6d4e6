"use strict";
// The worker in which the program runs: files in memory, as Go's runtime asks for them of
// a host, and what goes between the page and the program.
(() => {
  const fault = (code) => Object.assign(new Error(code), { code });
  let inodes = 0;
  const node = (mode, holds) => ({ ino: ++inodes, mode, time: Date.now(), holds, size: 0 });
  const folder = () => node(0o040755, new Map());
  const isFolder = (n) => n.holds instanceof Map;
  const root = folder();
  const home = "/bed";
  for (const name of ["tmp", home.slice(1), "dev"]) root.holds.set(name, folder());

  const parts = (path) => {
    const out = [];
    for (const p of (path.startsWith("/") ? path : home + "/" + path).split("/")) {
      if (p === "..") out.pop();
      else if (p && p !== ".") out.push(p);
    }
    return out;
  };
  const find = (path) => {
    let at = root;
    for (const p of parts(path)) {
      if (!isFolder(at)) throw fault("ENOTDIR");
      at = at.holds.get(p);
      if (!at) throw fault("ENOENT");
    }
    return at;
  };
  const place = (path) => {
    const names = parts(path), name = names.pop();
    if (!name) throw fault("EEXIST");
    const inside = find("/" + names.join("/"));
    if (!isFolder(inside)) throw fault("ENOTDIR");
    return { inside: inside.holds, name, there: inside.holds.get(name) };
  };

  const open = new Map();
  let next = 3;
  const opened = (fd) => { const f = open.get(fd); if (!f) throw fault("EBADF"); return f; };
  const resize = (n, size) => {
    if (size > n.holds.length) {
      const more = new Uint8Array(Math.max(size, 2 * n.holds.length, 4096));
      more.set(n.holds.subarray(0, n.size));
      n.holds = more;
    } else if (size < n.size) n.holds.fill(0, size, n.size);
    n.size = size;
    n.time = Date.now();
  };
  const about = (n) => ({
    dev: 1, ino: n.ino, mode: n.mode, nlink: 1, uid: 0, gid: 0, rdev: 0, size: n.size, blksize: 4096, blocks: Math.ceil(n.size / 512),
    atimeMs: n.time, mtimeMs: n.time, ctimeMs: n.time, isDirectory: () => isFolder(n),
  });
  const write = { only: 1, both: 2, create: 64, exclusive: 128, empty: 512, end: 1024, folder: 65536 };
  const does = {
    open(path, flags, mode) {
      const at = parts(path).length ? place(path) : { there: root };
      let n = at.there;
      if (n && flags & write.create && flags & write.exclusive) throw fault("EEXIST");
      if (!n) {
        if (!(flags & write.create)) throw fault("ENOENT");
        at.inside.set(at.name, n = node(0o100000 | mode & 0o777, new Uint8Array(0)));
      }
      if (flags & write.folder && !isFolder(n)) throw fault("ENOTDIR");
      if (isFolder(n) && flags & 3) throw fault("EISDIR");
      if (flags & write.empty) resize(n, 0);
      open.set(next, { n, at: 0, flags });
      return next++;
    },
    close(fd) { opened(fd); open.delete(fd); },
    read(fd, to, from, count, at) {
      const f = opened(fd);
      if (isFolder(f.n)) throw fault("EISDIR");
      const begin = at ?? f.at, got = f.n.holds.subarray(begin, Math.min(begin + count, f.n.size));
      to.set(got, from);
      if (at === null || at === undefined) f.at += got.length;
      return got.length;
    },
    write(fd, data, from, count, at) {
      if (fd === 1 || fd === 2) { fs.writeSync(fd, data.subarray(from, from + count)); return count; }
      const f = opened(fd), begin = f.flags & write.end ? f.n.size : at ?? f.at;
      if (!(f.flags & 3)) throw fault("EBADF");
      if (begin + count > f.n.size) resize(f.n, begin + count);
      f.n.holds.set(data.subarray(from, from + count), begin);
      f.n.time = Date.now();
      if (at === null || at === undefined) f.at = begin + count;
      return count;
    },
    fstat: (fd) => about(opened(fd).n),
    stat: (path) => about(find(path)),
    lstat: (path) => about(find(path)),
    mkdir(path, mode) {
      const at = place(path);
      if (at.there) throw fault("EEXIST");
      at.inside.set(at.name, Object.assign(folder(), { mode: 0o040000 | mode & 0o777 }));
    },
    readdir(path) { const n = find(path); if (!isFolder(n)) throw fault("ENOTDIR"); return [...n.holds.keys()].sort(); },
    unlink(path) {
      const at = place(path);
      if (!at.there) throw fault("ENOENT");
      if (isFolder(at.there)) throw fault("EISDIR");
      at.inside.delete(at.name);
    },
    rmdir(path) {
      const at = place(path);
      if (!at.there) throw fault("ENOENT");
      if (!isFolder(at.there)) throw fault("ENOTDIR");
      if (at.there.holds.size) throw fault("ENOTEMPTY");
      at.inside.delete(at.name);
    },
    rename(from, to) {
      const a = place(from), b = place(to);
      if (!a.there) throw fault("ENOENT");
      if (b.there && isFolder(b.there) !== isFolder(a.there)) throw fault(isFolder(b.there) ? "EISDIR" : "ENOTDIR");
      if (b.there && isFolder(b.there) && b.there.holds.size) throw fault("ENOTEMPTY");
      a.inside.delete(a.name);
      b.inside.set(b.name, a.there);
    },
    link(from, to) {
      const n = find(from), b = place(to);
      if (b.there) throw fault("EEXIST");
      b.inside.set(b.name, n);
    },
    truncate: (path, size) => resize(find(path), size),
    ftruncate: (fd, size) => resize(opened(fd).n, size),
    chmod(path, mode) { const n = find(path); n.mode = n.mode & ~0o777 | mode & 0o777; },
    fchmod(fd, mode) { const n = opened(fd).n; n.mode = n.mode & ~0o777 | mode & 0o777; },
    utimes(path, a, m) { find(path).time = m * 1000; },
    fsync: (fd) => { opened(fd); },
    readlink: () => { throw fault("EINVAL"); },
    symlink: () => { throw fault("EPERM"); },
    chown() {}, fchown() {}, lchown() {},
  };
  const said = new TextDecoder();
  const fs = {
    constants: { O_WRONLY: write.only, O_RDWR: write.both, O_CREAT: write.create, O_TRUNC: write.empty, O_APPEND: write.end, O_EXCL: write.exclusive, O_DIRECTORY: write.folder },
    writeSync(fd, data) { console.log(said.decode(data).trimEnd()); return data.length; },
  };
  for (const [name, act] of Object.entries(does)) {
    fs[name] = (...args) => {
      const done = args.pop();
      let out;
      try { out = act(...args); } catch (e) { done(e.code ? e : fault("EIO")); return; }
      done(null, out);
    };
  }
  const none = () => { throw fault("ENOSYS"); };
  Object.assign(globalThis, {
    fs,
    path: { resolve: (...p) => "/" + parts(p.reduce((a, b) => b.startsWith("/") ? b : a + "/" + b)).join("/") },
    process: {
      getuid: () => 0, getgid: () => 0, geteuid: () => 0, getegid: () => 0, getgroups: none, pid: 1, ppid: 0, umask: () => 0o22,
      cwd: () => home, chdir: none,
    },
  });

  // The page sends the program once, as text, and then questions.
  const bytes = (text) => Uint8Array.fromBase64 ? Uint8Array.fromBase64(text) : Uint8Array.from(atob(text), (c) => c.charCodeAt(0));
  const started = new Promise((done) => { globalThis.ready = done; });
  const start = async (text) => {
    const go = new Go();
    const all = bytes(text.trim());
    // Not as a Blob: a worker of a page from disk may not read one back in every browser.
    const packed = new ReadableStream({ start(to) { to.enqueue(all); to.close(); } }).pipeThrough(new DecompressionStream("gzip"));
    const { instance } = await WebAssembly.instantiateStreaming(new Response(packed, { headers: { "Content-Type": "application/wasm" } }), go.importObject);
    go.run(instance).then(() => postMessage({ ended: "ended" }), (e) => postMessage({ ended: String(e) }));
  };
  onmessage = async (e) => {
    if (e.data.program !== undefined) {
      start(e.data.program).catch((err) => postMessage({ ended: String(err) }));
      return;
    }
    const { id, op, body } = e.data;
    (await started)(op, new Uint8Array(body), (status, heads, out) => postMessage({ id, status, heads: JSON.parse(heads), body: out.buffer }, [out.buffer]));
  };
})();
