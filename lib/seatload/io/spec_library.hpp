// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include <seatload/core/folder.hpp>
#include <seatload/core/folder_lock.hpp>
#include <seatload/record/shelf.hpp>
#include <seatload/wire/catalogue.hpp>

namespace seatload::io {

/// The library of specs in a folder: `<engine>/<position>.toml` is the revision last made, and the folder
/// `<engine>/<position>/` beside it holds earlier ones as revision-A.toml, and the evidence. It is locked as long as
/// the object lives, so that what is read belongs together, and what is written is written by one process at a time.
///
/// Each writing function changes one file, wholly or not at all, and safe on disk. Where a change takes two, the first
/// is one that no reader minds being there alone.
class SpecLibrary {
  public:
    enum class For { reading, writing };

    /// The library in a folder, which writing makes when it is not there. Errors: no such folder; locked by another.
    static Result<SpecLibrary> open(const std::filesystem::path& folder, For purpose);

    const std::filesystem::path& path() const { return root_.path(); }
    /// Every address, in order; what stands in the folder and is none of a library's files comes as warnings.
    Result<std::vector<record::Address>> addresses() const;
    /// All that is kept at an address; without `earlier`, the revision last made alone.
    record::Shelf shelf(const record::Address& address, const wire::Catalogue& wires, bool earlier = true) const;
    /// The shelves of addresses, in their order whatever the number of threads (0: as many as the machine has).
    std::vector<record::Shelf> shelves(const std::vector<record::Address>& addresses, const wire::Catalogue& wires,
                                       bool earlier, unsigned threads) const;
    /// The bytes of a file that lies beside a spec.
    Result<std::string> beside(const record::Address& address, const std::string& name) const;

    /// Whether a spec stands at the address.
    bool has(const record::Address& address) const;
    /// Puts a revision in as the one last made, in place of the one that stands there.
    Diagnostics put(const record::Address& address, std::string_view text) const;
    /// Puts the text of a revision that is about to be followed by another in its place beside.
    Diagnostics put_earlier(const record::Address& address, const std::string& index, std::string_view text) const;
    /// Puts a file beside the spec, under a name made of its own that no other file has; the name comes back. A file
    /// of the same bytes is taken to be this one.
    Result<std::string> put_beside(const record::Address& address, const std::string& name,
                                   std::string_view bytes) const;

  private:
    SpecLibrary(Folder root, FolderLock lock) : root_(std::move(root)), lock_(std::move(lock)) {}

    Folder root_;
    FolderLock lock_;
};

}  // namespace seatload::io
