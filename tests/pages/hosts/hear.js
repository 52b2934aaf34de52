/* What a page does with a widget: it hears the result and keeps what it wants of it. */
document.addEventListener('lubber-result', function (event) {
  document.getElementById('heard').textContent = JSON.stringify(event.detail);
});
