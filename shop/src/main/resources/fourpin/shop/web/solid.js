// The case in three dimensions. It is fetched from the server after each change of the job; shelves lie where the handles of
// the drawing say, and are moved by them. The library comes only when somebody wants to look.
const at = (id) => document.getElementById(id);
const say = (words) => {
  at("solid-says").textContent = words;
};

const STEP = Math.PI / 12;
const CLOSER = 0.85;
const FILL = 0.92; // of the picture by the whole case
const FIRST = { turn: Math.PI / 7, rise: Math.PI / 14 };

async function view() {
  const THREE = await import("./three.module.min.js");
  const { GLTFLoader } = await import("./GLTFLoader.js");
  const { OrbitControls } = await import("./OrbitControls.js");
  const canvas = at("solid-canvas");
  const renderer = new THREE.WebGLRenderer({ canvas, antialias: true, alpha: true });
  const scene = new THREE.Scene();
  scene.add(new THREE.HemisphereLight(0xffffff, 0x9a948a, 2.2));
  const sun = new THREE.DirectionalLight(0xffffff, 1.6);
  sun.position.set(-1, 2, 3);
  scene.add(sun);
  const camera = new THREE.PerspectiveCamera(30, 1, 0.05, 60);
  camera.position.setFromSpherical(new THREE.Spherical(1, Math.PI / 2 - FIRST.rise, FIRST.turn));

  let whole = null;
  let shelves = [];
  let doors = [];
  const middle = new THREE.Vector3();
  let corners = []; // of the case, from its middle

  // Shelves are taken before the controls get hold of the pointer.
  const ray = new THREE.Raycaster();
  const plane = new THREE.Plane();
  let taken = null;
  const pointAt = (event) => {
    const box = canvas.getBoundingClientRect();
    const spot = new THREE.Vector2(((event.clientX - box.left) / box.width) * 2 - 1, 1 - ((event.clientY - box.top) / box.height) * 2);
    ray.setFromCamera(spot, camera);
  };
  const handleOf = (shelf) => at("shelf-" + shelf.userData.bay + "-" + shelf.userData.shelf);
  const bodyOf = (thing) => (thing && !thing.userData.what ? bodyOf(thing.parent) : thing);
  canvas.addEventListener("pointerdown", (event) => {
    if (!whole || event.button !== 0) return;
    pointAt(event);
    const solid = ray.intersectObject(whole, true).filter((hit) => hit.object.isMesh && !doors.includes(bodyOf(hit.object)));
    const body = solid.length ? bodyOf(solid[0].object) : null;
    if (!body || !body.userData.levels || !handleOf(body)) return;
    const towards = camera.getWorldDirection(new THREE.Vector3()).setY(0).normalize();
    plane.setFromNormalAndCoplanarPoint(towards, solid[0].point);
    taken = { handle: handleOf(body), levels: body.userData.levels, above: body.position.y - solid[0].point.y };
    controls.enabled = false;
    canvas.setPointerCapture(event.pointerId);
    begin(taken.handle);
  });
  canvas.addEventListener("pointermove", (event) => {
    const spot = new THREE.Vector3();
    if (!taken) return;
    pointAt(event);
    if (!ray.ray.intersectPlane(plane, spot)) return;
    const top = spot.y + taken.above;
    let nearest = 0;
    taken.levels.forEach((level, i) => {
      if (Math.abs(level - top) < Math.abs(taken.levels[nearest] - top)) nearest = i;
    });
    lay(taken.handle, nearest + 1);
  });
  const leave = (what) => () => {
    if (!taken) return;
    what(taken.handle);
    taken = null;
    controls.enabled = true;
  };
  canvas.addEventListener("pointerup", leave(send));
  canvas.addEventListener("pointercancel", leave(putBack));

  const controls = new OrbitControls(camera, canvas);
  controls.enablePan = false;
  controls.enableZoom = false;
  const draw = () => renderer.render(scene, camera);
  controls.addEventListener("change", draw);

  const spotAt = (turn, rise, away) => new THREE.Vector3().setFromSpherical(new THREE.Spherical(away, Math.PI / 2 - rise, turn));
  // From that side every corner is just in the picture, however wide or high it is.
  const farAway = (turn, rise) => {
    const towards = spotAt(turn, rise, 1);
    const right = new THREE.Vector3(0, 1, 0).cross(towards).normalize();
    const up = towards.clone().cross(right);
    const high = FILL * Math.tan((camera.fov * Math.PI) / 360);
    const wide = high * camera.aspect;
    return Math.max(...corners.map((c) => c.dot(towards) + Math.max(Math.abs(c.dot(right)) / wide, Math.abs(c.dot(up)) / high)));
  };
  const seenFrom = () => {
    const from = new THREE.Spherical().setFromVector3(camera.position.clone().sub(controls.target));
    return { turn: from.theta, rise: Math.PI / 2 - from.phi, away: from.radius };
  };
  const closeness = () => {
    const { turn, rise, away } = seenFrom();
    return away / farAway(turn, rise);
  };
  const look = (turn, rise, away) => {
    camera.position.copy(spotAt(turn, rise, away)).add(middle);
    controls.target.copy(middle);
    controls.update();
    draw();
  };
  const turned = (which) => {
    const { turn, rise, away } = seenFrom();
    const to = {
      left: [turn + STEP, rise, away],
      right: [turn - STEP, rise, away],
      up: [turn, Math.min(rise + STEP, Math.PI / 2 - 0.01), away],
      down: [turn, Math.max(rise - STEP, -Math.PI / 2 + 0.01), away],
      nearer: [turn, rise, away * CLOSER],
      farther: [turn, rise, away / CLOSER],
      first: [FIRST.turn, FIRST.rise, farAway(FIRST.turn, FIRST.rise)],
    };
    look(...to[which]);
  };
  document.querySelectorAll("[data-look]").forEach((b) => b.addEventListener("click", () => turned(b.dataset.look)));

  // Keeps the side that is looked at, and how much of the picture the case fills.
  const fit = (closer) => {
    const box = canvas.getBoundingClientRect();
    if (!box.width || !box.height) return;
    renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
    renderer.setSize(box.width, box.height, false);
    camera.aspect = box.width / box.height;
    camera.updateProjectionMatrix();
    const { turn, rise } = seenFrom();
    look(turn, rise, closer * farAway(turn, rise));
  };

  const openDoors = () => {
    const part = at("solid-doors").value / at("solid-doors").max;
    at("solid-doors-part").hidden = doors.length === 0;
    doors.forEach((door) => door.rotation.set(0, (door.userData.opens * part * Math.PI) / 180, 0));
    draw();
  };
  at("solid-doors").addEventListener("input", openDoors);

  const layShelves = () => {
    shelves.forEach((shelf) => {
      const handle = handleOf(shelf);
      if (handle) shelf.position.y = shelf.userData.levels[handle.getAttribute("aria-valuenow") - 1];
    });
    draw();
  };

  // Arrises are drawn, so that wood stands off from wood of the same colour.
  const arris = new THREE.LineBasicMaterial({ color: 0x2a2118, transparent: true, opacity: 0.55 });
  const outline = (mesh) => {
    if (mesh.material.name !== "hole") mesh.add(new THREE.LineSegments(new THREE.EdgesGeometry(mesh.geometry), arris));
  };

  // What the graphics processor holds of a case goes only when it is told so.
  const leaveBehind = (former) => {
    scene.remove(former);
    former.traverse((thing) => {
      thing.geometry?.dispose();
      [thing.material].flat().forEach((material) => {
        if (!material || material === arris) return;
        Object.values(material).forEach((value) => value?.isTexture && value.dispose());
        material.dispose();
      });
    });
  };

  let seen = "";
  let busy = false;
  async function fetchCase() {
    if (busy || seen === at("head").dataset.seen) return;
    busy = true;
    const wanted = at("head").dataset.seen;
    try {
      const answer = await fetch(canvas.dataset.file, { credentials: "same-origin", redirect: "error" });
      if (!answer.ok) throw new Error(answer.status);
      const file = await new GLTFLoader().parseAsync(await answer.arrayBuffer(), "");
      if (whole) leaveBehind(whole);
      const closer = whole ? closeness() : 1;
      whole = file.scene;
      shelves = [];
      doors = [];
      const meshes = [];
      whole.traverse((thing) => {
        if (thing.userData.levels) shelves.push(thing);
        if (thing.userData.opens) doors.push(thing);
        if (thing.isMesh) meshes.push(thing);
      });
      meshes.forEach(outline);
      scene.add(whole);
      at("solid-about").textContent = file.asset.extras.about + ".";
      const box = new THREE.Box3().setFromObject(whole);
      box.getCenter(middle);
      corners = [0, 1, 2, 3, 4, 5, 6, 7].map((i) => new THREE.Vector3(...["x", "y", "z"].map((axis, bit) => box[i & (1 << bit) ? "max" : "min"][axis])).sub(middle));
      fit(closer);
      openDoors();
      layShelves();
      say("");
    } catch (e) {
      say(String(e.message) === "404" ? "This case cannot be built as it is stated, so there is nothing to look at." : "The case could not be fetched; the drawing shows it.");
    } finally {
      seen = wanted;
      busy = false;
    }
    if (seen !== at("head").dataset.seen) fetchCase();
  }

  new ResizeObserver(() => whole && fit(closeness())).observe(canvas);
  new MutationObserver((changes) => {
    if (changes.some((c) => c.attributeName === "aria-valuenow" || c.type === "childList")) layShelves();
    fetchCase();
  }).observe(at("desk"), { subtree: true, childList: true, attributes: true, attributeFilter: ["aria-valuenow", "data-seen"] });
  await fetchCase();
  // What was drawn is on the screen with the frame after the next.
  requestAnimationFrame(() => requestAnimationFrame(() => (canvas.dataset.shown = "yes")));
}

let begun = false;
at("solid-shown")?.addEventListener("toggle", async () => {
  if (begun || !at("solid-shown").open) return;
  begun = true;
  say("Fetching the case …");
  at("solid-view").hidden = false;
  try {
    await view();
  } catch (e) {
    at("solid-view").hidden = true;
    say("This browser shows nothing in three dimensions (it takes WebGL 2). The drawing shows the same case.");
  }
});
