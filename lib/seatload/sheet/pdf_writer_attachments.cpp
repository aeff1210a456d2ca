// SPDX-License-Identifier: MIT
#include <seatload/sheet/pdf_writer_attachments.hpp>

#include <hpdf_namedict.h>

#include <algorithm>
#include <vector>

namespace seatload::sheet::detail {

namespace {

/// The embedded file stream itself: compressed, with its kind and size, and without a date.
HPDF_Dict embedded_file(HPDF_Doc doc, const Attachment& attachment) {
    const HPDF_Dict file = HPDF_DictStream_New(doc->mmgr, doc->xref);
    if (!file) throw PdfFailure{"no memory for an attachment"};
    write(file->stream, attachment.bytes);
    file->filter = HPDF_STREAM_FILTER_FLATE_DECODE;
    HPDF_Dict_AddName(file, "Type", "EmbeddedFile");
    HPDF_Dict_AddName(file, "Subtype", attachment.mime.c_str());
    const HPDF_Dict parameters = HPDF_Dict_New(doc->mmgr);
    HPDF_Dict_Add(file, "Params", parameters);
    HPDF_Dict_AddNumber(parameters, "Size", static_cast<HPDF_INT32>(attachment.bytes.size()));
    return file;
}

/// The file specification (ISO 32000-1, 7.11.3) with the keys libharu leaves out, and with the name alone where it
/// writes the path on the builder's machine.
HPDF_Dict file_specification(HPDF_Doc doc, const Attachment& attachment) {
    const HPDF_Encoder utf8 = HPDF_GetEncoder(doc, "UTF-8");
    const HPDF_Dict file = embedded_file(doc, attachment);
    const HPDF_Dict specification = HPDF_Dict_New(doc->mmgr);
    HPDF_Xref_Add(doc->xref, specification);
    HPDF_Dict_AddName(specification, "Type", "Filespec");
    HPDF_Dict_Add(specification, "F", HPDF_String_New(doc->mmgr, attachment.name.c_str(), nullptr));
    HPDF_Dict_Add(specification, "UF", HPDF_String_New(doc->mmgr, attachment.name.c_str(), utf8));
    HPDF_Dict_Add(specification, "Desc", HPDF_String_New(doc->mmgr, attachment.description.c_str(), utf8));
    HPDF_Dict_AddName(specification, "AFRelationship", "Source");
    const HPDF_Dict streams = HPDF_Dict_New(doc->mmgr);
    HPDF_Dict_Add(specification, "EF", streams);
    HPDF_Dict_Add(streams, "F", file);
    HPDF_Dict_Add(streams, "UF", file);
    return specification;
}

/// The document's (empty) list of embedded files, in a name tree of one leaf.
HPDF_Array new_list_of_files(HPDF_Doc doc) {
    const HPDF_NameDict names = HPDF_NameDict_New(doc->mmgr, doc->xref);
    HPDF_Catalog_SetNames(doc->catalog, names);
    const HPDF_NameTree tree = HPDF_NameTree_New(doc->mmgr, doc->xref);
    HPDF_NameDict_SetNameTree(names, HPDF_NAME_EMBEDDED_FILES, tree);
    return static_cast<HPDF_Array>(HPDF_Dict_GetItem(tree, "Names", HPDF_OCLASS_ARRAY));
}

}  // namespace

// Attaches in the order of the names, as a name tree must be: libharu's own HPDF_AttachFile files them wrongly from
// the third on, and readers then find none.
void attach(const Document& document, std::span<const Attachment> attachments) {
    if (attachments.empty()) return;
    std::vector<const Attachment*> in_order;
    for (const Attachment& attachment : attachments) in_order.push_back(&attachment);
    std::sort(in_order.begin(), in_order.end(),
              [](const Attachment* a, const Attachment* b) { return a->name < b->name; });
    const HPDF_Doc doc = document.handle();
    const HPDF_Array names = new_list_of_files(doc);
    const HPDF_Array associated = HPDF_Array_New(doc->mmgr);
    HPDF_Dict_Add(doc->catalog, "AF", associated);
    document.check("starting the list of attachments");
    for (const Attachment* attachment : in_order) {
        const HPDF_Dict specification = file_specification(doc, *attachment);
        HPDF_Array_Add(names, HPDF_String_New(doc->mmgr, attachment->name.c_str(), nullptr));
        HPDF_Array_Add(names, specification);
        HPDF_Array_Add(associated, specification);
    }
    document.check("attaching files");
}

}  // namespace seatload::sheet::detail
