/** Shows a drawing of ours with its own lines and letters: in a root of its own, so that its style reaches nothing else on the page. */
export function setApart(place: HTMLElement, svg: string): { update: (svg: string) => void } {
  const root = place.attachShadow({ mode: 'open' });
  const show = (drawing: string): void => {
    root.innerHTML = drawing.replace('<svg ', '<svg style="display:block;width:100%;height:auto" ');
  };
  show(svg);
  return { update: show };
}
