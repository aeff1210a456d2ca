// SPDX-License-Identifier: MIT
#include <elements/calculix.hpp>

#include <cmath>
#include <cstdlib>
#include <iostream>
#include <sstream>
#include <stdexcept>
#include <support/scratch_folder.hpp>

namespace seatload::test::elements {
namespace {

constexpr int kBricksATurn = 12;

// ---- the deck: what the program is given ---------------------------------------------------------------------------

void write_set(std::ostream& deck, const char* name, const std::vector<int>& nodes) {
    deck << "*NSET, NSET=" << name << '\n';
    for (const int n : nodes) deck << n << ",\n";
}

/// Every node of the head moves as its first one does, which keeps it from tilting and turning.
void write_head(std::ostream& deck, const std::vector<int>& head) {
    for (std::size_t i = 1; i < head.size(); ++i)
        for (int axis = 1; axis <= 3; ++axis)
            deck << "*EQUATION\n2\n" << head[i] << ',' << axis << ",1.," << head[0] << ',' << axis << ",-1.\n";
}

void write_model(std::ostream& deck, const ActiveCoils& coils, const HelixMesh& mesh, Head head) {
    deck.precision(12);
    deck << "*NODE\n";
    for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
        deck << i + 1 << ',' << mesh.nodes[i][0] << ',' << mesh.nodes[i][1] << ',' << mesh.nodes[i][2] << '\n';
    deck << "*ELEMENT, TYPE=C3D20R, ELSET=WIRE\n";
    for (std::size_t i = 0; i < mesh.bricks.size(); ++i) {
        deck << i + 1;
        for (std::size_t k = 0; k < 20; ++k) deck << (k == 14 ? ",\n" : ",") << mesh.bricks[i][k];
        deck << '\n';
    }
    write_set(deck, "FOOT", mesh.foot);
    deck << "*NSET, NSET=HEAD\n" << mesh.head[0] << '\n';
    std::vector<int> centreline;
    for (const auto& pair : mesh.centreline) centreline.insert(centreline.end(), pair.begin(), pair.end());
    write_set(deck, "LINE", centreline);
    write_head(deck, mesh.head);
    const double poisson = coils.young_modulus_mpa / (2.0 * coils.shear_modulus_mpa) - 1.0;
    deck << "*MATERIAL, NAME=M\n*ELASTIC\n"
         << coils.young_modulus_mpa << ',' << poisson
         << "\n*DENSITY\n7.85e-9\n*SOLID SECTION, ELSET=WIRE, MATERIAL=M\n*BOUNDARY\nFOOT,1,3\nHEAD,3,3\n";
    if (head == Head::on_axis) deck << "HEAD,1,2\n";
}

void write_stage(std::ostream& deck, const Stage& stage) {
    deck << "*STEP, NLGEOM, INC=200\n*STATIC\n0.5,1.,1e-5,0.5\n*BOUNDARY\nHEAD,3,3," << -stage.deflection_mm
         << "\n*NODE PRINT, NSET=HEAD, FREQUENCY=1000\nU\n*NODE PRINT, NSET=LINE, FREQUENCY=1000\nU\n"
         << "*NODE PRINT, NSET=FOOT, TOTALS=ONLY, FREQUENCY=1000\nRF\n*END STEP\n";
    if (!stage.wants_stability) return;
    deck << "*STEP, PERTURBATION\n*FREQUENCY\n1\n*END STEP\n";
}

std::string deck_text(const ActiveCoils& coils, const HelixMesh& mesh, Head head, const std::vector<Stage>& stages) {
    std::ostringstream deck;
    write_model(deck, coils, mesh, head);
    for (const Stage& stage : stages) write_stage(deck, stage);
    return deck.str();
}

// ---- the table file: what it answers -------------------------------------------------------------------------------

/// The rows of numbers that follow a heading line, up to the next heading.
std::vector<std::vector<double>> rows(std::istream& text) {
    std::vector<std::vector<double>> all;
    std::string line;
    while (std::getline(text, line)) {
        if (line.find_first_not_of(" \r") == std::string::npos) {
            if (all.empty()) continue;
            break;
        }
        std::istringstream cells(line);
        std::vector<double> row;
        for (double value = 0.0; cells >> value;) row.push_back(value);
        if (!row.empty()) all.push_back(row);
    }
    return all;
}

/// Half the sum of a place on the coil and of the one half a turn on is the middle of that coil.
std::vector<Sideways> middles(const std::vector<std::vector<double>>& line) {
    std::vector<Sideways> wire;
    for (std::size_t i = 0; i + 1 < line.size(); i += 2)
        wire.push_back({0.5 * (line[i][1] + line[i + 1][1]), 0.5 * (line[i][2] + line[i + 1][2])});
    constexpr std::size_t kHalfTurn = kBricksATurn / 2;
    std::vector<Sideways> all;
    for (std::size_t i = 0; i + kHalfTurn < wire.size(); ++i)
        all.push_back(
            {0.5 * (wire[i].x_mm + wire[i + kHalfTurn].x_mm), 0.5 * (wire[i].y_mm + wire[i + kHalfTurn].y_mm)});
    return all;
}

std::vector<StageResult> read_answer(std::istream& text) {
    std::vector<StageResult> all;
    bool complete = false;
    int of_mode = 0;  // a mode of vibration is followed by its shape, in the same three tables
    for (std::string line; std::getline(text, line);) {
        if (line.find("E I G E N V A L U E    N U M B E R") != std::string::npos) {
            of_mode = 3;
        } else if (of_mode > 0) {
            of_mode -= line.find("for set ") != std::string::npos ? 1 : 0;
        } else if (line.find("set HEAD") != std::string::npos) {
            const auto head = rows(text);
            all.push_back({});
            complete = false;
            all.back().deflection_mm = -head.at(0).at(3);
            all.back().head = {head[0][1], head[0][2]};
        } else if (line.find("set LINE") != std::string::npos) {
            all.back().coils = middles(rows(text));
        } else if (line.find("total force") != std::string::npos && line.find("set FOOT") != std::string::npos) {
            all.back().load_n = rows(text).at(0).at(2);
            complete = true;
        } else if (line.find("E I G E N V A L U E   O U T P U T") != std::string::npos) {
            for (int skipped = 0; skipped < 5; ++skipped) std::getline(text, line);
            const auto modes = rows(text);
            if (!all.empty()) all.back().softest = modes.at(0).at(1);
        }
    }
    if (!all.empty() && !complete) all.pop_back();
    return all;
}

}  // namespace

double Sideways::length() const { return std::hypot(x_mm, y_mm); }

void need_calculix() {
    if (std::system("command -v ccx >/dev/null 2>&1") == 0) return;
    std::cout << "skipped: ccx is not installed (Debian package calculix-ccx)" << std::endl;
    std::exit(kSkipped);
}

std::vector<StageResult> press(const ActiveCoils& coils, Head head, const std::vector<Stage>& stages) {
    const ScratchFolder folder;
    write_bytes(folder / "spring.inp", deck_text(coils, helix_mesh(coils, kBricksATurn), head, stages));
    const std::string command = "cd " + folder.path().string() + " && OMP_NUM_THREADS=1 ccx spring > spring.out 2>&1";
    // The program ends with an error when it cannot reach a stage; what it wrote before that still holds.
    [[maybe_unused]] const int code = std::system(command.c_str());
    if (const char* kept = std::getenv("SEATLOAD_KEEP_DECKS"))
        std::filesystem::copy(
            folder.path(), kept,
            std::filesystem::copy_options::recursive | std::filesystem::copy_options::overwrite_existing);
    std::istringstream answer(bytes_of(folder / "spring.dat"));
    auto all = read_answer(answer);
    if (all.empty()) throw std::runtime_error("ccx reached no stage: " + bytes_of(folder / "spring.out"));
    return all;
}

}  // namespace seatload::test::elements
