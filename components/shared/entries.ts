/**
 * Makes entries show what the widget says stands in them. Templates say it by `.defaultValue`, `.defaultChecked`
 * and `.defaultSelected`, which an entry no longer follows once the user has typed or chosen in it; so what a page
 * takes back, or a field does not take over, would stay to be seen. What is right already is not touched: the
 * cursor stays in its place, and a word half composed as it is. Files alone are the user's own.
 */
export function showWhatStands(root: ParentNode): void {
  for (const entry of root.querySelectorAll<HTMLInputElement>('input:not([type=file]), textarea')) {
    if (entry.value !== entry.defaultValue) entry.value = entry.defaultValue;
    if (entry.checked !== entry.defaultChecked) entry.checked = entry.defaultChecked;
  }
  for (const option of root.querySelectorAll('option')) if (option.defaultSelected && !option.selected) option.selected = true;
}
