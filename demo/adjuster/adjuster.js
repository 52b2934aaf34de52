/* The list of the morning leads to the round it speaks of. */
for (const way of document.querySelectorAll('a[data-round]')) {
  way.addEventListener('click', () => {
    document.getElementById('swing').stage = way.dataset.round;
  });
}
