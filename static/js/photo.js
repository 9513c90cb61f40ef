// Photos are made small on the phone, so that they take little of its signal; where the browser
// can't, the server does it. What is chosen is sent at once, unless it stays in its form.
document.addEventListener("change", async ({ target: input }) => {
  if (!input.matches("[data-photo]") || !input.files.length) return;
  const LONGEST = 1600;

  async function made(file) {
    const picture = await createImageBitmap(file, { imageOrientation: "from-image" });
    const scale = Math.min(1, LONGEST / Math.max(picture.width, picture.height));
    const [width, height] = [picture.width, picture.height].map((side) => Math.round(side * scale));
    const canvas = new OffscreenCanvas(width, height);
    canvas.getContext("2d").drawImage(picture, 0, 0, width, height);
    const blob = await canvas.convertToBlob({ type: "image/jpeg", quality: 0.8 });
    return new File([blob], "photo.jpg", { type: "image/jpeg" });
  }

  const taken = [...input.files];
  const small = new DataTransfer();
  try {
    for (const file of taken) small.items.add(await made(file).catch(() => file));
    // A form that was sent meanwhile is empty, or has the next photo.
    if (input.files[0] !== taken[0]) return;
    input.files = small.files;
  } catch {
    // As they are.
  }
  if (input.dataset.photo !== "stays") input.form.requestSubmit();
});
