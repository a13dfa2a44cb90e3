// What is painted once becomes a still image: a canvas on the page is looked at by the browser for every picture it draws, changed or not.

/**
 * Puts an image of what is painted in the place of a canvas, once it is ready. Until then, and where it cannot be made, the canvas stands.
 * @param {HTMLCanvasElement} canvas on the page @param {(image: HTMLImageElement) => boolean} take told when it is ready; false: it is not wanted any more
 */
export function still(canvas, take) {
  canvas.toBlob(async blob => {
    if (!blob) return;
    const image = new Image(), address = URL.createObjectURL(blob);
    image.src = address;
    image.alt = '';
    const ready = await image.decode().then(() => true, () => false);
    URL.revokeObjectURL(address);
    if (!ready || !take(image)) return;
    image.className = canvas.className;
    image.style.cssText = canvas.style.cssText;
    image.hidden = canvas.hidden;
    canvas.replaceWith(image);
  });
}
