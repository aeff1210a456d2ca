// SPDX-License-Identifier: MIT
#pragma once

/// Before a function: it is compiled twice, once for processors that reckon four numbers at once, and the program picks
/// when it starts. Both give the same numbers to the last bit, as neither may fuse a product with a sum. An attribute
/// cannot be had by a function of ours, hence a macro; empty where nothing can pick (another processor, compiler or
/// loader), and under sanitizers, which are not yet awake when it is picked.
#if defined(__x86_64__) && defined(__gnu_linux__) && defined(__GNUC__) && !defined(__clang__) && \
    !defined(__SANITIZE_ADDRESS__) && !defined(__SANITIZE_THREAD__)
#define SEATLOAD_WIDE [[gnu::target_clones("avx2", "default")]]
#else
#define SEATLOAD_WIDE
#endif

/// Before a function that such ones call: becomes part of each of them, so that it is compiled as they are.
#if defined(__GNUC__)
#define SEATLOAD_INLINE [[gnu::always_inline]] inline
#else
#define SEATLOAD_INLINE inline
#endif
