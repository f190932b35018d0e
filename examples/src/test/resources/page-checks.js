// Checks of a page in a browser. Each gives a list of what is wrong, in words; an empty list is good.
({
  // Nothing is wider than the screen, so that nobody has to push the page to and fro.
  tooWide() {
    const root = document.documentElement, most = root.clientWidth;
    const wrong = root.scrollWidth > most ? ['the page: ' + root.scrollWidth + ' of ' + most] : [];
    for (const each of document.body.querySelectorAll('*')) {
      const box = each.getBoundingClientRect();
      if (!each.closest('thead') && box.width > 0 && (box.right > most + 0.5 || box.left < -0.5)) {
        wrong.push(each.tagName + ': ' + each.textContent.slice(0, 60));
      }
    }
    return wrong;
  },

  // Words of a drawing stay on its paper and run into no other words.
  wordsOfDrawings() {
    const wrong = [];
    for (const svg of document.querySelectorAll('svg')) {
      const name = svg.querySelector('title').textContent, paper = svg.viewBox.baseVal, before = [];
      for (const text of svg.querySelectorAll('text')) {
        const box = text.getBBox();
        if (box.x < -0.4 || box.y < -0.1 || box.x + box.width > paper.width + 0.4 || box.y + box.height > paper.height + 0.6) {
          wrong.push(name + ': beside the paper: ' + text.textContent);
        }
        // letters take about the middle six tenths of their line
        const ink = { left: box.x, right: box.x + box.width, top: box.y + box.height * 0.25, foot: box.y + box.height * 0.8 };
        for (const other of before) {
          const apart = ink.left >= other.right || ink.right <= other.left || ink.top >= other.foot || ink.foot <= other.top;
          if (!apart) {
            wrong.push(name + ': ' + other.said + ' / ' + text.textContent);
          }
        }
        before.push({ ...ink, said: text.textContent });
      }
    }
    return wrong;
  },

  // On paper a drawing has its true size, finds room in one column, and fits on a page.
  drawingsOnPaper(pageHeightMm) {
    const mm = 96 / 25.4, wrong = [];
    for (const figure of document.querySelectorAll('figure')) {
      const svg = figure.querySelector('svg'), box = svg.getBoundingClientRect(), name = svg.querySelector('title').textContent;
      const column = figure.getBoundingClientRect();
      if (Math.abs(box.width - parseFloat(svg.getAttribute('width')) * mm) > 0.5) {
        wrong.push(name + ': not its true size');
      }
      if (box.right > column.right + 0.5 || figure.getClientRects().length !== 1) {
        wrong.push(name + ': cut by its column');
      }
      if (getComputedStyle(figure).breakInside !== 'avoid' || column.height > pageHeightMm * mm) {
        wrong.push(name + ': cut by the page');
      }
    }
    return wrong;
  },

  // No letter smaller than so many CSS pixels.
  smallLetters(least) {
    const wrong = [];
    for (const each of document.querySelectorAll('body *')) {
      const own = [...each.childNodes].some(node => node.nodeType === 3 && node.textContent.trim());
      if (!own || ['title', 'desc'].includes(each.tagName) || each.getClientRects().length === 0) {
        continue;
      }
      const svg = each.closest('svg');
      const scale = svg ? svg.getBoundingClientRect().width / svg.viewBox.baseVal.width : 1;
      const size = parseFloat(getComputedStyle(each).fontSize) * scale;
      if (size < least - 0.02) {
        wrong.push(size + ' px: ' + each.textContent.slice(0, 60));
      }
    }
    return wrong;
  },

  // Letters against what is behind them: 4.5 to 1 or more.
  pale() {
    const light = colour => {
      const parts = colour.match(/[\d.]+/g).slice(0, 3).map(part => part / 255);
      const [r, g, b] = parts.map(part => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const ratio = (one, other) => (Math.max(light(one), light(other)) + 0.05) / (Math.min(light(one), light(other)) + 0.05);
    const behind = each => {
      for (let at = each; at; at = at.parentElement) {
        const colour = getComputedStyle(at).backgroundColor;
        if (colour !== 'rgba(0, 0, 0, 0)') {
          return colour;
        }
      }
      return 'rgb(255, 255, 255)';
    };
    const wrong = [];
    for (const each of document.querySelectorAll('body *')) {
      const own = [...each.childNodes].some(node => node.nodeType === 3 && node.textContent.trim());
      if (!own || ['title', 'desc'].includes(each.tagName)) {
        continue;
      }
      const svg = each.closest('svg');
      const grounds = svg ? [...svg.querySelectorAll('polygon')].map(area => getComputedStyle(area).fill) : [];
      const ink = svg ? getComputedStyle(each).fill : getComputedStyle(each).color;
      for (const ground of [behind(each), ...grounds]) {
        if (ratio(ink, ground) < 4.5) {
          wrong.push(ink + ' on ' + ground + ': ' + each.textContent.slice(0, 60));
        }
      }
    }
    return wrong;
  },

  // What a reader who cannot see the page goes by.
  order() {
    const wrong = [], need = (good, what) => good || wrong.push(what);
    need(document.documentElement.lang === 'en', 'no language');
    need(document.title.trim() !== '', 'no title');
    need(document.querySelectorAll('main').length === 1, 'not one main part');
    need(document.querySelectorAll('h1').length === 1, 'not one first heading');
    need(!document.querySelector('meta[name=viewport]').content.includes('user-scalable'), 'cannot be made larger');
    need(document.querySelectorAll('[tabindex], [autofocus], [accesskey]').length === 0, 'an order of its own');
    const ids = [...document.querySelectorAll('[id]')].map(each => each.id);
    need(new Set(ids).size === ids.length, 'an id twice');
    let level = 0;
    for (const heading of document.querySelectorAll('h1, h2, h3, h4, h5, h6')) {
      const own = Number(heading.tagName[1]);
      need(own <= level + 1, 'a level left out: ' + heading.textContent);
      need(heading.textContent.trim() !== '', 'an empty heading');
      level = own;
    }
    for (const section of document.querySelectorAll('section')) {
      need(section.firstElementChild.tagName === 'H2', 'a part without its heading');
    }
    for (const table of document.querySelectorAll('table')) {
      const columns = table.tHead.rows[0].cells.length;
      need([...table.tHead.rows[0].cells].every(cell => cell.tagName === 'TH' && cell.scope === 'col' && cell.textContent.trim()),
        'a column without its name');
      for (const row of table.tBodies[0].rows) {
        need(row.cells[0].tagName === 'TH' && row.cells[0].scope === 'row', 'a row without its name: ' + row.textContent);
        need(row.cells.length === columns, 'a row that is too short: ' + row.textContent);
      }
    }
    for (const list of document.querySelectorAll('dl')) {
      const tags = [...list.children].map(each => each.tagName).join('');
      need(/^(DTDD)+$/.test(tags), 'sizes that are not in pairs: ' + tags);
    }
    for (const list of document.querySelectorAll('ul')) {
      need(list.children.length > 0 && [...list.children].every(each => each.tagName === 'LI'), 'a list of something else');
    }
    return wrong;
  },

  // Nothing that runs, and nothing from elsewhere.
  alive() {
    const wrong = [...document.querySelectorAll('script, iframe, object, embed, form, link, img')].map(each => each.tagName);
    for (const each of document.querySelectorAll('*')) {
      for (const attribute of each.attributes) {
        if (attribute.name.startsWith('on') || ['href', 'src', 'action'].includes(attribute.name)) {
          wrong.push(each.tagName + ' ' + attribute.name);
        }
      }
    }
    return wrong.concat(performance.getEntriesByType('resource').map(each => each.name));
  },

  // The drawings by their names, with the words in them.
  drawings() {
    return [...document.querySelectorAll('svg')].map(svg => ({
      name: svg.querySelector('title').textContent,
      words: [...svg.querySelectorAll('text')].map(text => text.textContent),
    }));
  },

  // Where the words behind a name stand: left edge of the heading's last letter minus right edge of the name's box.
  behind(name) {
    const heading = [...document.querySelectorAll('h3')].find(each => each.textContent.startsWith(name + ': how wide'));
    const range = document.createRange();
    const words = [...heading.childNodes].find(node => node.nodeType === 3 && node.textContent.includes('how wide'));
    range.setStart(words, words.textContent.indexOf('how'));
    range.setEnd(words, words.textContent.indexOf('how') + 3);
    return range.getBoundingClientRect().left - heading.querySelector('bdi').getBoundingClientRect().right;
  },
})
