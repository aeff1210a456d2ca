# What is altered, and which tests must notice.
set(laws consistency/designs.cpp)

mutant(of_nothing FILE record/landed_cost.cpp FROM "(net + c.duty) * tax" TO "(net + c.duty) * tax"
       TESTS unit/record/landed_cost_test.cpp)

# The spring
mutant(rate_exponent FILE spring/rate.hpp FROM "share * share * share" TO "share * share"
       TESTS consistency/stress_laws_test.cpp ${laws})
mutant(work_half FILE spring/rate.hpp FROM "0.5 * (rate_of_spring" TO "1.0 * (rate_of_spring"
       TESTS consistency/stress_laws_test.cpp ${laws})
mutant(stress_exponent FILE spring/stress.hpp FROM "(8.0 * w / std" TO "(8.0 * w * w / std"
       TESTS consistency/stress_laws_test.cpp ${laws})
mutant(wahl_constant FILE spring/stress.hpp FROM "0.615 / w" TO "0.651 / w"
       TESTS consistency/stress_laws_test.cpp ${laws})
mutant(bergstraesser_constant FILE spring/stress.hpp FROM "(w - 0.75)" TO "(w - 0.57)"
       TESTS consistency/stress_laws_test.cpp ${laws})
mutant(solid_coils FILE spring/coils.hpp FROM "total_coils + 1.5" TO "total_coils + 1.0"
       TESTS unit/spring/ends_test.cpp)
mutant(buckling_constant FILE spring/buckling.hpp FROM "(0.5 + shear_over_young)" TO "(0.6 + shear_over_young)"
       TESTS consistency/stability_laws_test.cpp ${laws})
mutant(surge_mass FILE spring/surge.hpp FROM "shear_modulus / (2.0 * density)" TO "shear_modulus / density"
       TESTS consistency/shape_laws_test.cpp ${laws})
mutant(goodman_exponent FILE spring/fatigue.hpp FROM "(1.0 - used)" TO "(1.0 - used * used)"
       TESTS consistency/fatigue_laws_test.cpp ${laws})
mutant(wire_length_exponent FILE spring/helix.hpp FROM "slope * slope" TO "slope"
       TESTS consistency/shape_laws_test.cpp ${laws})

# Wire and tolerances
mutant(strength_exponent FILE wire/strength.cpp FROM "law.exponent)" TO "2.0 * law.exponent)"
       TESTS unit/wire/strength_test.cpp)
mutant(load_loss_slope FILE wire/strength.cpp FROM "(temperature.degrees - from_degrees)" TO "temperature.degrees"
       TESTS unit/wire/strength_test.cpp)
mutant(load_tolerance_exponent FILE tolerance/en15800.hpp FROM "std::pow(d_mm, 3.3)" TO "std::pow(d_mm, 3.0)"
       TESTS unit/tolerance/jis_size_test.cpp)
mutant(load_tolerance_of_load FILE tolerance/en15800.hpp FROM "0.015 * load_n" TO "0.05 * load_n"
       TESTS unit/tolerance/en15800_test.cpp)

# What is judged, measured, inspected and paid
mutant(solid_with_thickest_wire FILE check/numbers.cpp FROM "(wire.d_mm + wire.d_tolerance_mm)" TO "wire.d_mm"
       TESTS unit/check/rules_test.cpp)
mutant(line_weight_exponent FILE bench/line_fit.cpp FROM "square(slope * p.u_x)" TO "std::abs(slope * p.u_x)"
       TESTS unit/bench/line_fit_test.cpp)
mutant(guard_band_share FILE inspection/guard_band.cpp FROM "inwards < expanded" TO "inwards < 0.5 * expanded"
       TESTS unit/inspection/guard_band_test.cpp)
mutant(tax_on_duty FILE record/landed_cost.cpp FROM "(net + c.duty) * tax" TO "net * tax"
       TESTS unit/record/landed_cost_test.cpp)
