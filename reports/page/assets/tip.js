// A tip is {head, rows: [[label, value], …]}: finished texts. It is built as
// nodes, so no text is ever read as markup.
function tipNode(tip) {
  var box = document.createElement('div');
  box.className = 'tip';
  var head = document.createElement('b');
  head.textContent = tip.head;
  box.appendChild(head);
  (tip.rows || []).forEach(function (row) {
    var line = document.createElement('div');
    row.forEach(function (text) {
      var cell = document.createElement('span');
      cell.textContent = text;
      line.appendChild(cell);
    });
    box.appendChild(line);
  });
  return box;
}

// tipFor finds the tip of what the pointer is on: by series id and index, or,
// for a tip that belongs to a place on the axis, under "axis".
function tipFor(tips) {
  return function (params) {
    var one = Array.isArray(params) ? params[0] : params;
    var list = Array.isArray(params) ? tips.axis : tips[one.seriesId];
    var tip = list && list[one.dataIndex];
    return tip ? tipNode(tip) : '';
  };
}
