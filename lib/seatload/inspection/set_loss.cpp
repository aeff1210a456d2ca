// SPDX-License-Identifier: MIT
#include <seatload/inspection/set_loss.hpp>

#include <seatload/inspection/summary.hpp>

namespace seatload::inspection {
namespace {

SetLoss loss_of(const Samples& samples, Kind kind) {
    SetLoss loss;
    loss.kind = kind;
    std::vector<double> shares;
    for (const Piece& piece : samples.pieces) {
        const auto before = piece.values.find(kind), after = piece.after.find(kind);
        if (before == piece.values.end() || after == piece.after.end() || !(before->second > 0.0)) continue;
        const double share = 1.0 - after->second / before->second;
        if (shares.empty() || share > loss.largest) {
            loss.largest = share;
            loss.piece = piece.name;
        }
        shares.push_back(share);
    }
    loss.count = static_cast<int>(shares.size());
    if (shares.empty()) return loss;
    const Summary summary = summarise(shares, {});
    loss.mean = summary.mean;
    loss.doubt = summary.mean_within;
    return loss;
}

}  // namespace

std::vector<SetLoss> set_losses(const Samples& samples) {
    std::vector<SetLoss> all;
    for (const Kind kind : kKinds)
        if (const SetLoss loss = loss_of(samples, kind); loss.count > 0) all.push_back(loss);
    return all;
}

}  // namespace seatload::inspection
