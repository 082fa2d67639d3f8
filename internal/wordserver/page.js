// A place that is tapped goes where one writes; Enter saves.
let field = document.querySelector("[data-text]");
document.addEventListener("focusin", (e) => { if (e.target.matches("[data-text]")) field = e.target; });
for (const place of document.querySelectorAll("[data-place]")) {
  const button = document.createElement("button");
  button.type = "button";
  button.textContent = place.textContent;
  place.replaceWith(button);
  button.addEventListener("click", () => {
    field.setRangeText(button.textContent, field.selectionStart, field.selectionEnd, "end");
    field.focus();
  });
}
document.addEventListener("keydown", (e) => {
  if (e.key === "Enter" && !e.isComposing && e.target.matches("textarea")) {
    e.preventDefault();
    e.target.form.requestSubmit();
  }
});
