// A photo is made small on the phone, so that it takes little of its signal; where the browser
// can't, the server does it. What is chosen is sent at once.
document.addEventListener("change", async ({ target: input }) => {
  if (!input.matches("[data-photo]") || !input.files[0]) return;
  const LONGEST = 1600;
  try {
    const picture = await createImageBitmap(input.files[0], { imageOrientation: "from-image" });
    const scale = Math.min(1, LONGEST / Math.max(picture.width, picture.height));
    const [width, height] = [picture.width, picture.height].map((side) => Math.round(side * scale));
    const canvas = new OffscreenCanvas(width, height);
    canvas.getContext("2d").drawImage(picture, 0, 0, width, height);
    const small = await canvas.convertToBlob({ type: "image/jpeg", quality: 0.8 });
    const chosen = new DataTransfer();
    chosen.items.add(new File([small], "photo.jpg", { type: "image/jpeg" }));
    input.files = chosen.files;
  } catch {
    // As it is.
  }
  input.form.requestSubmit();
});
