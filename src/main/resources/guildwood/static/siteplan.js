// Drawing on a plan with pointer and keys. All of it ends up in the number fields of the form, which work without this file.
'use strict';
(() => {
  const FINGER_PX = 12;
  const CLICK_PX = 5;

  const svgPart = (name, attributes, parent) => {
    const part = document.createElementNS('http://www.w3.org/2000/svg', name);
    Object.entries(attributes).forEach(([key, value]) => part.setAttribute(key, value));
    parent.append(part);
    return part;
  };
  const number = text => {
    const plain = text.trim().replace('−', '-').replace(',', '.');
    return /^[-+]?\d+(\.\d+)?$/.test(plain) ? Number(plain) : NaN;
  };
  const filled = (words, ...values) => values.reduce((text, value, i) => text.replace('{' + i + '}', value), words);
  const spot = (svg, event) => new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
  const finger = svg => FINGER_PX / svg.getScreenCTM().a;

  // Dragging a handle moves it; a press beside the handles that does not become a drag sets a point.
  const point = (svg, moved, pressed, panned) => {
    let held = null;
    svg.addEventListener('pointerdown', event => {
      if (event.button !== 0) return;
      held = {id: event.pointerId, at: [event.clientX, event.clientY], handle: event.target.closest('[data-handle]'), far: false};
      if (held.handle) {
        svg.setPointerCapture(event.pointerId);
        held.handle.focus();
      }
    });
    svg.addEventListener('pointermove', event => {
      if (!held || event.pointerId !== held.id) return;
      const step = [event.clientX - held.at[0], event.clientY - held.at[1]];
      if (Math.hypot(...step) > CLICK_PX) held.far = true;
      if (held.handle && held.far) moved(held.handle.dataset.handle, spot(svg, event));
      else if (!held.handle && held.far && event.pointerType === 'mouse' && panned) {
        panned(step);
        held.at = [event.clientX, event.clientY];
      }
    });
    svg.addEventListener('pointerup', event => {
      if (held && event.pointerId === held.id && !held.handle && !held.far) pressed(spot(svg, event));
      held = null;
    });
    svg.addEventListener('pointercancel', () => { held = null; });
  };
  const ARROWS = {ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1]};

  const draw = form => {
    const svg = document.getElementById('site-plan');
    const draft = document.getElementById('plan-draft');
    const list = document.getElementById('plan-points');
    const fresh = document.getElementById('plan-new-point').content;
    const said = document.getElementById('plan-measure');
    const words = form.dataset;
    const kind = words.kind;
    const unitM = Number(words.unitM);
    const [west, north, scale] = [svg.dataset.west, svg.dataset.north, svg.dataset.scale].map(Number);
    const first = list.cloneNode(true);
    const whole = svg.getAttribute('viewBox').split(' ').map(Number);
    let view = [...whole];

    const rows = () => [...list.children].map(row => ({row, fields: row.querySelectorAll('input')}));
    const points = () => rows().map(({row, fields}) => ({row, fields, x: number(fields[0].value), y: number(fields[1].value)}))
        .filter(p => !Number.isNaN(p.x) && !Number.isNaN(p.y));
    const drawn = p => [(p.x * unitM - west) * scale, (north - p.y * unitM) * scale];
    const ground = at => [(west + at.x / scale) / unitM, (north - at.y / scale) / unitM];
    const set = (fields, [x, y]) => { fields[0].value = x.toFixed(2); fields[1].value = y.toFixed(2); };
    const breadth = () => {
      const field = document.getElementById(kind === 'tree' ? 'crown-radius' : 'width');
      const typed = field ? number(field.value) : NaN;
      return Number.isNaN(typed) ? 0 : typed * unitM * scale;
    };

    const renumber = () => rows().forEach(({row, fields}, i) => {
      const n = String(i + 1);
      row.querySelector('.plan-number').textContent = n;
      ['x.', 'y.'].forEach((axis, j) => {
        fields[j].id = fields[j].name = axis + n;
        const label = row.querySelectorAll('label')[j];
        label.htmlFor = axis + n;
        label.textContent = fresh.querySelectorAll('label')[j].dataset.words.replace('0', n);
      });
      row.querySelectorAll('button').forEach((button, j) => {
        button.value = (j ? 'remove:' : 'add:') + n;
        button.lastElementChild.textContent = fresh.querySelectorAll('button')[j].lastElementChild.dataset.words.replace('0', n);
      });
    });

    const measure = () => {
      const all = points();
      let [twice, round] = [0, 0];
      all.forEach((p, i) => {
        const q = all[(i + 1) % all.length];
        twice += p.x * q.y - q.x * p.y;
        if (kind !== 'path' || i + 1 < all.length) round += Math.hypot(q.x - p.x, q.y - p.y);
      });
      const length = round.toFixed(1) + ' ' + words.length;
      if (kind === 'tree') return all.length ? filled(words.sayPoint, 1, all[0].x, all[0].y) : '';
      if (kind === 'path') return all.length > 1 ? filled(words.sayPath, length) : '';
      return all.length > 2 ? filled(words.sayArea, (Math.abs(twice) / 2).toFixed(1) + ' ' + words.area, length) : '';
    };

    const redraw = () => {
      const focused = document.activeElement && document.activeElement.dataset.handle;
      const all = points();
      draft.replaceChildren();
      const line = all.map(p => drawn(p).join(',')).join(' ');
      if (kind === 'tree') {
        if (all.length) svgPart('circle', {class: 'draft-area', cx: drawn(all[0])[0], cy: drawn(all[0])[1], r: breadth()}, draft);
      } else if (kind === 'path') {
        svgPart('polyline', {class: 'draft-path', points: line, 'stroke-width': breadth()}, draft);
        svgPart('polyline', {class: 'draft-line', points: line}, draft);
      } else {
        svgPart(all.length > 2 ? 'polygon' : 'polyline', {class: 'draft-area', points: line}, draft);
      }
      const radius = finger(svg);
      all.forEach((p, i) => {
        const [cx, cy] = drawn(p);
        const handle = svgPart('circle', {class: 'handle', cx, cy, r: radius, tabindex: 0, role: 'button', 'data-handle': i,
          'aria-label': filled(words.sayPoint, i + 1, p.x + ' ' + words.length, p.y + ' ' + words.length)}, draft);
        if (String(i) === focused) handle.focus({preventScroll: true});
      });
      said.textContent = measure();
    };

    const focus = i => {
      const handle = draft.querySelector('[data-handle="' + i + '"]');
      if (handle) handle.focus({preventScroll: true});
    };
    // Where a new point belongs: between the ends of the side it lies on, else after the last.
    const placeFor = at => {
      const all = points().map(p => drawn(p));
      const sides = kind === 'path' ? all.length - 1 : all.length > 2 ? all.length : 0;
      for (let i = 0; i < sides; i++) {
        const [a, b] = [all[i], all[(i + 1) % all.length]];
        const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
        const along = Math.min(1, Math.max(0, ((at.x - a[0]) * dx + (at.y - a[1]) * dy) / (dx * dx + dy * dy || 1)));
        if (Math.hypot(at.x - a[0] - along * dx, at.y - a[1] - along * dy) < finger(svg) * 0.7) return i + 1;
      }
      return all.length;
    };
    const add = (index, place) => {
      if (kind === 'tree') {
        set(rows()[0].fields, place);
      } else {
        // Rows that nobody has filled in are used up first.
        rows().filter(({fields}) => !fields[0].value.trim() && !fields[1].value.trim()).forEach(({row}) => row.remove());
        list.insertBefore(fresh.cloneNode(true), list.children[index] || null);
        set(list.children[index].querySelectorAll('input'), place);
        renumber();
      }
      redraw();
      focus(kind === 'tree' ? 0 : index);
      said.textContent = filled(words.sayAdded, kind === 'tree' ? 1 : index + 1) + ' ' + measure();
    };
    const remove = row => {
      row.remove();
      renumber();
      redraw();
      const left = points().length;
      focus(Math.max(0, left - 1));
      said.textContent = filled(words.sayRemoved, left) + ' ' + measure();
    };
    const back = () => {
      list.replaceChildren(...first.cloneNode(true).children);
      redraw();
      said.textContent = words.sayBack + ' ' + measure();
    };
    // A point set by a button lies half way to the next one, or beside the last, or in the middle of what is shown.
    const addAfter = index => {
      const all = points();
      if (!all.length) return add(0, ground({x: view[0] + view[2] / 2, y: view[1] + view[3] / 2}));
      const a = all[Math.min(index, all.length) - 1];
      const b = index < all.length ? all[index] : kind !== 'path' && all.length > 2 ? all[0] : null;
      const aside = view[2] / scale / unitM / 12;
      return add(Math.min(index, all.length), b ? [(a.x + b.x) / 2, (a.y + b.y) / 2] : [a.x + aside, a.y]);
    };

    const show = () => {
      svg.setAttribute('viewBox', view.join(' '));
      redraw();
    };
    const zoom = factor => {
      const width = Math.min(whole[2], view[2] * factor);
      const height = whole[3] * width / whole[2];
      const all = points().map(drawn);
      const middle = all.length ? all[all.length - 1] : [view[0] + view[2] / 2, view[1] + view[3] / 2];
      view = [middle[0] - width / 2, middle[1] - height / 2, width, height];
      keepInside();
    };
    const keepInside = () => {
      view[0] = Math.max(whole[0], Math.min(view[0], whole[0] + whole[2] - view[2]));
      view[1] = Math.max(whole[1], Math.min(view[1], whole[1] + whole[3] - view[3]));
      show();
    };

    point(svg, (i, at) => {
      set(points()[i].fields, ground(at));
      redraw();
    }, at => add(placeFor(at), ground(at)), step => {
      const k = svg.getScreenCTM().a;
      view = [view[0] - step[0] / k, view[1] - step[1] / k, view[2], view[3]];
      keepInside();
    });
    svg.addEventListener('keydown', event => {
      const i = event.target.dataset.handle;
      if (i === undefined) return;
      const arrow = ARROWS[event.key];
      if (arrow) {
        const step = event.shiftKey ? 1 : 0.1;
        const p = points()[i];
        set(p.fields, [p.x + arrow[0] * step, p.y + arrow[1] * step]);
        redraw();
      } else if ((event.key === 'Delete' || event.key === 'Backspace') && kind !== 'tree') {
        remove(points()[i].row);
      } else if (event.key === 'Enter') {
        form.requestSubmit(document.getElementById('plan-save'));
      } else if (event.key === 'Escape') {
        back();
      } else {
        return;
      }
      event.preventDefault();
    });
    form.addEventListener('click', event => {
      const button = event.target.closest('button[name="do"]');
      if (!button || button.value === 'save') return;
      event.preventDefault();
      const at = Number(button.value.split(':')[1]);
      if (button.value.startsWith('remove:')) remove(list.children[at - 1]);
      else addAfter(at === 0 ? points().length : points().filter(p => rows().findIndex(r => r.row === p.row) < at).length);
    });
    form.addEventListener('input', redraw);
    document.getElementById('plan-in').addEventListener('click', () => zoom(1 / 1.6));
    document.getElementById('plan-out').addEventListener('click', () => zoom(1.6));
    document.getElementById('plan-reset').addEventListener('click', back);
    window.addEventListener('resize', redraw);
    svg.setAttribute('role', 'group');
    svg.classList.add('drawing');
    svg.querySelectorAll('.plan-current').forEach(shape => shape.remove());
    document.querySelectorAll('.plan-tools, .plan-keys').forEach(part => { part.hidden = false; });
    redraw();
  };

  const lay = form => {
    const svg = document.getElementById('plan-picture');
    const spots = document.getElementById('plan-spots');
    const said = document.getElementById('picture-said');
    const radios = [...form.querySelectorAll('input[name="spot"]')];
    const [width, height] = [Number(svg.dataset.width), Number(svg.dataset.height)];
    const fields = name => ['.x', '.y'].map(axis => document.getElementById(name + axis));
    const inside = (value, most) => Math.min(most, Math.max(0, value)).toFixed(1);
    const words = name => radios.find(r => r.value === name).closest('label').textContent.trim();

    const redraw = () => {
      const focused = document.activeElement && document.activeElement.dataset.handle;
      spots.replaceChildren();
      const radius = finger(svg);
      radios.map(r => r.value).forEach((name, i) => {
        const [x, y] = fields(name).map(field => number(field.value));
        if (Number.isNaN(x) || Number.isNaN(y)) return;
        const handle = svgPart('circle', {class: 'spot', cx: x, cy: y, r: radius, tabindex: 0, role: 'button', 'data-handle': name,
          'aria-label': words(name)}, spots);
        svgPart('circle', {cx: x, cy: y, r: radius / 8}, spots);
        svgPart('text', {x: x + radius * 1.2, y: y + radius / 2, 'font-size': radius * 1.5, 'stroke-width': radius / 3}, spots).textContent = i + 1;
        if (name === focused) handle.focus({preventScroll: true});
      });
    };
    const set = (name, x, y) => {
      const [right, down] = fields(name);
      right.value = inside(x, width);
      down.value = inside(y, height);
      redraw();
    };
    point(svg, (name, at) => set(name, at.x, at.y), at => {
      const chosen = radios.findIndex(r => r.checked);
      set(radios[chosen].value, at.x, at.y);
      said.textContent = filled(form.dataset.say, words(radios[chosen].value));
      radios[Math.min(chosen + 1, radios.length - 1)].checked = true;
    });
    svg.addEventListener('keydown', event => {
      const name = event.target.dataset.handle;
      const arrow = ARROWS[event.key];
      if (!name || !arrow) return;
      const step = event.shiftKey ? 10 : 1;
      const [x, y] = fields(name).map(field => number(field.value));
      set(name, x + arrow[0] * step, y - arrow[1] * step);
      event.preventDefault();
    });
    form.addEventListener('input', redraw);
    window.addEventListener('resize', redraw);
    radios[0].checked = true;
    radios.forEach((radio, i) => { radio.closest('label').querySelector('span').prepend((i + 1) + ' '); });
    svg.setAttribute('role', 'group');
    svg.classList.add('drawing');
    form.querySelectorAll('.plan-tools').forEach(part => { part.hidden = false; });
    redraw();
  };

  const editor = document.getElementById('plan-editor');
  if (editor) draw(editor);
  const picture = document.getElementById('picture-editor');
  if (picture) lay(picture);
})();
