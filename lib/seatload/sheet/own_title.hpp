// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <utility>

#include <seatload/record/spec.hpp>
#include <seatload/sheet/title_block.hpp>

namespace seatload::sheet {

/// What our own reports, which are English, call a spring.
inline std::string title_of(const record::Spec& spec) { return spec.title.empty() ? "Compression spring" : spec.title; }

/// The title block of a report of our own on a spring.
inline TitleBlock own_title_block(const record::Spec& spec, std::string document_type, std::string document_status) {
    return title_block_of(spec.identity, title_of(spec), std::move(document_type), std::move(document_status));
}

}  // namespace seatload::sheet
