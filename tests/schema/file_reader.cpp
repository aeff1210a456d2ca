// SPDX-License-Identifier: MIT
#include "file_reader.hpp"

#include <toml++/toml.h>

#include <sstream>
#include <stdexcept>

#include <seatload/io/builtin.hpp>
#include <seatload/io/history_tables.hpp>
#include <seatload/io/lot_file.hpp>
#include <seatload/io/maker_file.hpp>
#include <seatload/io/plunger_file.hpp>
#include <seatload/io/readings_file.hpp>
#include <seatload/io/reply_file.hpp>
#include <seatload/io/requirement_file.hpp>
#include <seatload/io/samples_file.hpp>
#include <seatload/io/sampling_file.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/io/spring_file.hpp>
#include <seatload/io/tolerance_file.hpp>
#include <seatload/io/wire_file.hpp>
#include <seatload/io/wording_file.hpp>
#include <support/builtin.hpp>

namespace seatload::test {

namespace {

/// The states below a spec, which its own reader passes over.
Diagnostics complaints_of_states(std::string_view text, const std::string& name) {
    io::Document document(text, name);
    {
        io::Reader root(document);
        root.allow("format");
        io::read_history(root);
    }
    return document.diagnostics();
}

}  // namespace

Diagnostics complaints_of(std::string_view kind, std::string_view text) {
    static const wire::Catalogue& catalogue = wires();
    static const inspection::SamplingTables sampling = io::builtin_sampling().value();
    static const record::PhraseBook english = io::builtin_wording("en");
    static const demand::Makers makers = io::builtin_makers();
    const std::string name = "x.toml";
    if (kind == "requirement") return io::read_requirement(text, name, catalogue, makers).error();
    if (kind == "plunger") return io::read_plunger(text, name).error();
    if (kind == "spring") return io::read_spring(text, name, catalogue).error();
    if (kind == "spec") return io::read_spec(text, name, catalogue).error();
    if (kind == "states") return complaints_of_states(text, name);
    if (kind == "readings") return io::read_readings(text, name, catalogue).error();
    if (kind == "samples") return io::read_samples(text, name, sampling, catalogue).error();
    if (kind == "lot") return io::read_lot(text, name).error();
    if (kind == "reply") return io::read_reply(text, name, nullptr).error();
    if (kind == "maker") return io::read_maker(text, name).error();
    if (kind == "wire") return io::read_wire_file(text, name, catalogue).error();
    if (kind == "sampling") return io::read_sampling(text, name).error();
    if (kind == "tolerances") return io::read_tolerances(text, name).error();
    if (kind == "wording") return io::read_wording(text, name, english).error();
    throw std::runtime_error("no reader for files of the kind " + std::string(kind));
}

nlohmann::json toml_as_json(std::string_view text) {
    try {
        const toml::table table = toml::parse(text);
        std::ostringstream out;
        out << toml::json_formatter(table);
        return nlohmann::json::parse(out.str());
    } catch (const std::exception&) {
        return nullptr;
    }
}

}  // namespace seatload::test
