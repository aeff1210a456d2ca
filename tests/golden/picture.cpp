// SPDX-License-Identifier: MIT
#include "picture.hpp"

#include <png.h>

#include <stdexcept>

namespace seatload::test {
namespace {

png_image empty_image() {
    png_image image{};
    image.version = PNG_IMAGE_VERSION;
    return image;
}

[[noreturn]] void fail(const std::filesystem::path& path, const png_image& image) {
    throw std::runtime_error(path.string() + ": " + image.message);
}

}  // namespace

Picture read_png(const std::filesystem::path& path) {
    png_image image = empty_image();
    if (png_image_begin_read_from_file(&image, path.c_str()) == 0) fail(path, image);
    image.format = PNG_FORMAT_GRAY;
    Picture picture{image.width, image.height, {}};
    picture.grey.resize(PNG_IMAGE_SIZE(image));
    if (png_image_finish_read(&image, nullptr, picture.grey.data(), 0, nullptr) == 0) fail(path, image);
    return picture;
}

Picture in_few_greys(Picture picture) {
    constexpr int kStep = 17;  // 255 in fifteenths
    for (std::uint8_t& grey : picture.grey) grey = static_cast<std::uint8_t>((grey + kStep / 2) / kStep * kStep);
    return picture;
}

void write_png(const std::filesystem::path& path, const Picture& picture) {
    png_image image = empty_image();
    image.width = picture.width;
    image.height = picture.height;
    image.format = PNG_FORMAT_GRAY;
    if (png_image_write_to_file(&image, path.c_str(), 0, picture.grey.data(), 0, nullptr) == 0) fail(path, image);
}

}  // namespace seatload::test
