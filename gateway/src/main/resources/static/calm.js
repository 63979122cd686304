// A region that says nothing new is left as it stands: whoever reads it, or hears it read, is not disturbed.
(function () {
  'use strict';

  function text(root, id) {
    var part = root.getElementById(id);
    return part ? part.textContent.replace(/\s+/g, ' ').trim() : '';
  }

  document.addEventListener('htmx:beforeSwap', function (event) {
    var region = event.detail.requestConfig && event.detail.requestConfig.elt;
    var parts = region && region.dataset ? region.dataset.calm : '';
    if (!parts || event.detail.xhr.status !== 200) {
      return;
    }
    var news = new DOMParser().parseFromString(event.detail.serverResponse, 'text/html');
    event.detail.shouldSwap = parts.split(' ').some(function (id) {
      return text(news, id) !== text(document, id);
    });
  });
})();
