/* The company's side: it hears what is offered to a record and shows what it would store. */
document.addEventListener('lubber-record-request', ({ detail }) => {
  document.getElementById('what').textContent = `Offered by <${detail.widget}>:`;
  document.getElementById('stored').textContent = JSON.stringify(detail.entry, null, 2);
});
