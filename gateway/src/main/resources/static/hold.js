// A button that has to be held: a short press of a finger or a mouse does nothing. The keyboard, and a browser without
// scripts, go by a second page instead.
'use strict';

for (const button of document.querySelectorAll('button[data-hold]')) {
  let timer = 0;
  let pressed = false;

  const release = () => {
    clearTimeout(timer);
    button.classList.remove('holding');
  };
  button.addEventListener('pointerdown', () => {
    pressed = true;
    button.classList.add('holding');
    timer = setTimeout(() => {
      release();
      button.form.elements.sure.value = 'yes';
      button.form.requestSubmit();
      button.form.elements.sure.value = '';
    }, Number(button.dataset.hold));
  });
  for (const end of ['pointerup', 'pointercancel', 'pointerleave']) {
    button.addEventListener(end, release);
  }
  button.addEventListener('click', (event) => {
    if (pressed) {
      event.preventDefault();
    }
    pressed = false;
  });
}
