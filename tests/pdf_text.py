"""PDFs read back as text: by PDFium, which had no part in writing them."""

import pypdfium2


def page_texts(pdf: bytes) -> tuple[str, ...]:
    """The text of each page."""
    with pypdfium2.PdfDocument(pdf) as document:
        return tuple(
            page.get_textpage().get_text_bounded().replace("\r\n", "\n") for page in document
        )


def words_of(pdf: bytes) -> str:
    """The text of all pages with one space between words."""
    return " ".join(" ".join(page_texts(pdf)).split())
