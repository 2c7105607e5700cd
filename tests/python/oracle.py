# SPDX-License-Identifier: MIT
"""The formulas once more, written out from the literature in 50-digit arithmetic (mpmath).

ORACLE maps "subject.function" to a function of the same keyword arguments as the library's, given as
mpf (strings for choices), that returns an mpf. Nothing here is taken from the library's own code, so
a slip in either shows as a difference. A remark `memory` marks a constant or an equation that no
print at hand confirms.
"""
import mpmath as mp

mp.mp.dps = 50

D = mp.mpf                       # a decimal constant, exact to the working precision
ZERO_CELSIUS_K = D("273.15")
ORACLE = {}


def _entry(subject):
    def register(fn):
        ORACLE[f"{subject}.{fn.__name__}"] = fn
        return fn
    return register


electrical, sensing, heating, air, setting_out, lighting = (_entry(s) for s in ("electrical", "sensing", "heating", "air", "setting_out", "lighting"))
electrical, sensing, heating, air, price = (_entry(s) for s in ("electrical", "sensing", "heating", "air", "price"))


def _kelvin(temperature_c):
    return mp.mpf(temperature_c) + ZERO_CELSIUS_K


# ---------------------------------------------------------------- electrical

@electrical
def voltage_drop(drop_mv_per_a_m, current_a, length_m):
    # BS 7671 Appendix 4, 6.1: (mV/A/m) Ib L / 1000, factor 2 of a single-phase run inside the table
    return mp.mpf(drop_mv_per_a_m) * current_a * length_m / 1000


@electrical
def voltage_drop_impedance(resistance_mohm_per_m, reactance_mohm_per_m, current_a, length_m, power_factor, b):
    # IEC 60364-5-52 Annex G: u = b (r cos phi + x sin phi) Ib L
    cos_phi = mp.mpf(power_factor)
    sin_phi = mp.sqrt(1 - cos_phi**2)
    drop_mohm_per_m = resistance_mohm_per_m * cos_phi + reactance_mohm_per_m * sin_phi
    return b * drop_mohm_per_m * current_a * length_m / 1000


@electrical
def ring_voltage_drop(resistance_mohm_per_m, ring_length_m, distance_m, current_a, spur_length_m=0):
    # Ohm's law with both ways round the ring in parallel, plus the spur in series
    one_way = mp.mpf(distance_m)
    other_way = ring_length_m - one_way
    ring_mohm = resistance_mohm_per_m * one_way * other_way / ring_length_m
    return current_a * (ring_mohm + resistance_mohm_per_m * mp.mpf(spur_length_m)) / 1000


@electrical
def operating_temperature_factor(design_current_a, tabulated_capacity_a, ambient_factor, grouping_factor, conductor_max_c):
    # BS 7671 Appendix 4, 6.1: [230 + tp - (Ca^2 Cg^2 - Ib^2/It^2)(tp - 30)] / (230 + tp)
    tp = mp.mpf(conductor_max_c)
    share = (mp.mpf(ambient_factor) * grouping_factor)**2 - (mp.mpf(design_current_a) / tabulated_capacity_a)**2
    return 1 - share * (tp - 30) / (230 + tp)


@electrical
def design_current(power_w, voltage_v, power_factor):
    # Ib = P / (U cos phi)
    return mp.mpf(power_w) / voltage_v / power_factor


@electrical
def design_current_three_phase(power_w, voltage_v, power_factor):
    # Ib = P / (sqrt(3) U cos phi), U between lines
    return mp.mpf(power_w) / voltage_v / power_factor / mp.sqrt(3)


@electrical
def resistance_at_temperature(resistance_20_mohm_per_m, temperature_c, alpha_per_k=D("0.00393")):
    # IEC 60228 annex on temperature correction; 0.00393 is copper (IACS)
    return resistance_20_mohm_per_m * (1 + alpha_per_k * (mp.mpf(temperature_c) - 20))


@electrical
def loop_resistance(line_mohm_per_m, cpc_mohm_per_m, length_m, temperature_factor=1):
    # R1 + R2, IET On-Site Guide Appendix I practice: (r1 + r2) L times the multiplier
    return (mp.mpf(line_mohm_per_m) + cpc_mohm_per_m) * length_m * temperature_factor / 1000


@electrical
def length_from_resistance(resistance_ohm, resistance_mohm_per_m):
    return mp.mpf(resistance_ohm) * 1000 / resistance_mohm_per_m


@electrical
def cross_connected_resistance(first_ohm, second_ohm, position_ratio):
    # R(x) = (x - x^2)(ra - rb)^2/(ra + rb) + ra rb/(ra + rb), as a public derivation sheet prints it
    ra, rb, x = mp.mpf(first_ohm), mp.mpf(second_ohm), mp.mpf(position_ratio)
    return (x - x**2) * (ra - rb)**2 / (ra + rb) + ra * rb / (ra + rb)


@electrical
def adiabatic_k_from_constants(heat_capacity_j_per_k_mm3, beta_k, resistivity_20_ohm_mm, initial_c, final_c):
    # IEC 60364-5-54 Annex A: k = sqrt(Qc (beta + 20)/rho20) sqrt(ln((beta + tf)/(beta + ti)))
    beta = mp.mpf(beta_k)
    heat = heat_capacity_j_per_k_mm3 * (beta + 20) / resistivity_20_ohm_mm
    return mp.sqrt(heat * (mp.log(beta + final_c) - mp.log(beta + initial_c)))


# IEC 60364-5-54 Annex A, Table A.54.1: beta [C] and K = sqrt(Qc (beta + 20)/rho20), rounded to whole units as the
# standard prints it. memory: the table itself was not seen. With these K all k values seen in print (Tables A.54.4,
# A.54.5; BS 7671 54.2, 54.4, 54.5) come out within 0.5; with K from the unrounded Qc and rho20 (225.669, 148.108,
# 78.187, 41.157) two of them do not: aluminium 90/250 C (print 94) and steel 85/220 C (print 48).
ADIABATIC = {
    "copper": (D("234.5"), D(226)),
    "aluminium": (D(228), D(148)),
    "steel": (D(202), D(78)),
    "lead": (D(230), D(41)),
}
# The same table's Qc [J/(K mm3)] and rho20 [ohm mm], for adiabatic_k_from_constants. memory
ADIABATIC_CONSTANTS = {
    "copper": (D("3.45e-3"), D("17.241e-6")),
    "aluminium": (D("2.5e-3"), D("28.264e-6")),
    "steel": (D("3.8e-3"), D("138e-6")),
    "lead": (D("1.45e-3"), D("214e-6")),
}


@electrical
def adiabatic_k(material, initial_c, final_c):
    beta, k0 = ADIABATIC[material]
    return k0 * mp.sqrt(mp.log((beta + final_c) / (beta + initial_c)))


@electrical
def adiabatic_area(current_a, time_s, k):
    # IEC 60364-5-54, 543.1.2: S = sqrt(I^2 t)/k
    return mp.mpf(current_a) * mp.sqrt(time_s) / k


@electrical
def adiabatic_area_from_let_through(let_through_a2s, k):
    return mp.sqrt(mp.mpf(let_through_a2s)) / k


@electrical
def adiabatic_time(current_a, area_mm2, k):
    # IEC 60364-4-43, 434.5.2: sqrt(t) = k S/I
    return (mp.mpf(k) * area_mm2 / current_a)**2


@electrical
def adiabatic_final_temperature(let_through_a2s, area_mm2, material, initial_c):
    # the equation of k above, solved for tf
    beta, k0 = ADIABATIC[material]
    exponent = mp.mpf(let_through_a2s) / (k0 * area_mm2)**2
    return (beta + initial_c) * mp.exp(exponent) - beta


@electrical
def adiabatic_withstand(area_mm2, k):
    # IEC 60364-4-43, 434.5.2: k^2 S^2
    return (mp.mpf(area_mm2) * k)**2


@electrical
def fault_energy(current_a, time_s):
    # Joule's law for a steady current: the let-through integral is I^2 t
    return mp.mpf(current_a)**2 * time_s


@electrical
def earth_fault_loop_impedance(external_ohm, r1_plus_r2_ohm):
    # Zs = Ze + (R1 + R2)
    return mp.mpf(external_ohm) + r1_plus_r2_ohm


@electrical
def max_earth_fault_loop_impedance(voltage_v, minimum_voltage_factor, operating_current_a):
    # BS 7671 411.4.4: Zs <= Cmin U0/Ia; IEC 60364-4-41 411.4.4 has no Cmin
    return mp.mpf(voltage_v) * minimum_voltage_factor / operating_current_a


@electrical
def warm_loop_impedance(cold_loop_impedance_ohm, external_ohm, temperature_factor=D("1.2")):
    # Zs = Ze + (R1 + R2), with the warm resistance a multiple of the cold one; 1.20 is 1 + 0.004 (70 - 20)
    cold_conductors = mp.mpf(cold_loop_impedance_ohm) - external_ohm
    return external_ohm + temperature_factor * cold_conductors


@electrical
def prospective_fault_current(voltage_v, impedance_ohm):
    return mp.mpf(voltage_v) / impedance_ohm


# IEC 60228 Tables 1 to 3, maximum resistance at 20 C [ohm/km], one print a conductor: class 1 and 2 plain copper, class 5 plain
# copper, class 5 metal-coated copper, class 1 and 2 aluminium
IEC_60228 = {
    ("copper", 2): dict(zip(("0.5", "0.75", "1", "1.5", "2.5", "4", "6", "10", "16", "25", "35", "50", "70", "95", "120"),
                            ("36", "24.5", "18.1", "12.1", "7.41", "4.61", "3.08", "1.83", "1.15", "0.727", "0.524", "0.387", "0.268", "0.193", "0.153"))),
    ("copper", 5): dict(zip(("0.5", "0.75", "1", "1.5", "2.5", "4", "6", "10", "16", "25", "35", "50", "70", "95", "120"),
                            ("39", "26", "19.5", "13.3", "7.98", "4.95", "3.3", "1.91", "1.21", "0.78", "0.554", "0.386", "0.272", "0.206", "0.161"))),
    ("copper_metal_coated", 5): dict(zip(("0.5", "0.75", "1", "1.5", "2.5", "4", "6", "10", "16", "25", "35", "50", "70", "95", "120"),
                                         ("40.1", "26.7", "20", "13.7", "8.21", "5.09", "3.39", "1.95", "1.24", "0.795", "0.565", "0.393", "0.277", "0.21", "0.164"))),
    ("aluminium", 2): dict(zip(("10", "16", "25", "35", "50", "70", "95", "120"), ("3.08", "1.91", "1.2", "0.868", "0.641", "0.443", "0.32", "0.253"))),
}


def size(area_mm2):
    """A size as the tables write it."""
    return area_mm2 if isinstance(area_mm2, str) else mp.nstr(area_mm2, 6).removesuffix(".0")


@electrical
def conductor_resistance_20(metal, conductor_class, area_mm2):
    return D(IEC_60228[metal, 5 if conductor_class == "5" else 2][size(area_mm2)])


@electrical
def current_capacity(coefficient_a, exponent_m, coefficient_b, exponent_n, area_mm2):
    # IEC 60364-5-52 Annex D: I = A S^m - B S^n
    s = mp.mpf(area_mm2)
    return coefficient_a * s**exponent_m - coefficient_b * s**exponent_n


# IEC 60364-5-52 Table D.52.1, copper to 16 mm2. memory
ANNEX_D = {
    "pvc_2_a1": ("11.2", "0.6118"), "pvc_2_a2": ("10.8", "0.6015"), "pvc_2_b1": ("13.5", "0.625"), "pvc_2_b2": ("13.1", "0.6"), "pvc_2_c": ("15", "0.625"),
    "pvc_3_b2": ("11.65", "0.6005"), "pvc_3_c": ("13.5", "0.625"), "xlpe_2_b1": ("17.76", "0.625"), "xlpe_2_c": ("18.77", "0.628"),
}


@electrical
def installed_capacity(installation, area_mm2):
    a, m = ANNEX_D[installation]
    return D(a) * mp.mpf(area_mm2) ** D(m)


# BS 7671 Table 4D5, one column a method, then mV/A/m
TABLE_4D5 = {
    "100": (13, 16, 21, 27, 34, 45, 57), "101": ("10.5", 13, 17, 22, 27, 36, 46), "102": (13, 16, 21, 27, 35, 47, 63),
    "103": (8, 10, "13.5", "17.5", "23.5", 32, "42.5"), "C": (16, 20, 27, 37, 47, 64, 85), "A": ("11.5", "14.5", 20, 26, 32, 44, 57),
    "drop": (44, 29, 18, 11, "7.3", "4.4", "2.8"),
}
SIZES_4D5 = ("1", "1.5", "2.5", "4", "6", "10", "16")


@electrical
def flat_twin_capacity(method, area_mm2):
    return D(TABLE_4D5[method][SIZES_4D5.index(size(area_mm2))])


@electrical
def flat_twin_voltage_drop(area_mm2):
    return D(TABLE_4D5["drop"][SIZES_4D5.index(size(area_mm2))])


# Copper, IEC 60228 class 1 and 2: R1 + R2 [ohm/km] and protective conductor [mm2] of flat twin cables
FLAT_TWIN_CPC = (1, 1, "1.5", "1.5", "2.5", 4, 6)


@electrical
def smallest_size(method, rating_a, design_current_a, length_m, correction_factor, drop_limit_v, external_ohm, loop_limit_ohm, let_through_a2s):
    slack = 1 + D("1e-14")  # exactly at a condition the rounding of the double decides whether it is met
    for i, name in enumerate(SIZES_4D5):
        line, cpc = IEC_60228["copper", 2][name], IEC_60228["copper", 2][str(FLAT_TWIN_CPC[i])]
        carries = D(TABLE_4D5[method][i]) * correction_factor * slack >= rating_a
        drop = D(TABLE_4D5["drop"][i]) * design_current_a * length_m / 1000 <= drop_limit_v * slack
        loop = external_ohm + D("1.2") * (D(line) + D(cpc)) * length_m / 1000 <= loop_limit_ohm * slack
        heat = let_through_a2s <= (115 * D(FLAT_TWIN_CPC[i])) ** 2  # k 115: a core of a 70 C cable
        if carries and drop and loop and heat:
            return D(name)
    raise ValueError("no size")


@electrical
def ambient_factor(conductor_max_c, ambient_c, reference_c=30):
    # sqrt((tp - ta)/(tp - tr))
    return mp.sqrt((mp.mpf(conductor_max_c) - ambient_c) / (mp.mpf(conductor_max_c) - reference_c))


@electrical
def grouping_factor(arrangement, circuits):
    # BS 7671 Table 4C1
    table = {
        "bunched": {1: 1, 2: "0.8", 3: "0.7", 4: "0.65", 5: "0.6", 6: "0.57", 7: "0.54", 8: "0.52", 9: "0.5", 12: "0.45", 16: "0.41", 20: "0.38"},
        "single_layer": {1: 1, 2: "0.85", 3: "0.79", 4: "0.75", 5: "0.73", 6: "0.72", 7: "0.72", 8: "0.71", 9: "0.7", 12: "0.7", 16: "0.7", 20: "0.7"},
    }
    return D(table[arrangement][int(circuits)])


@electrical
def thermal_insulation_factor(length_in_insulation_mm, edition="17th"):
    # BS 7671:2018 Table 52.2 (memory); 16th edition Table 52A (seen)
    table = {"17th": (1, "0.88", "0.78", "0.63", "0.51", "0.5"), "16th": (1, "0.89", "0.81", "0.68", "0.55", "0.5")}
    return D(table[edition][(0, 50, 100, 200, 400, 500).index(int(length_in_insulation_mm))])


@electrical
def required_capacity(rating_a, ambient_factor, grouping_factor, insulation_factor=1, device_factor=1):
    # It >= In/(Ca Cg Ci Cf)
    return mp.mpf(rating_a) / ambient_factor / grouping_factor / insulation_factor / device_factor


@electrical
def short_overload_current(capacity_a, preload_a, time_s, time_constant_s):
    # one thermal time constant: theta(t) = theta_0 + (theta_end - theta_0)(1 - exp(-t/tau)), theta ~ I^2
    gone = -mp.expm1(-mp.mpf(time_s) / time_constant_s)
    return mp.sqrt((mp.mpf(capacity_a) ** 2 - mp.mpf(preload_a) ** 2 * (1 - gone)) / gone)


@electrical
def breaker_operating_current(type, rating_a):
    # IEC 60898-1 Table 2: upper end of the instantaneous band
    return {"B": 5, "C": 10, "D": 20}[type] * mp.mpf(rating_a)


@electrical
def breaker_holding_current(type, rating_a):
    return {"B": 3, "C": 5, "D": 10}[type] * mp.mpf(rating_a)


# BS 7671:2008 Table 41.2 (BS 88-2.2, BS 1361, BS 3036, BS 1362) and 2008+A1 (BS 88-2:2010), 230 V, 0.4 s; BS 1361 30 A at 5 s
TABLE_41_2 = {
    "bs88_2_2_6": "8.52", "bs88_2_2_10": "5.11", "bs88_2_2_16": "2.70", "bs88_2_2_20": "1.77", "bs88_2_2_25": "1.44", "bs88_2_2_32": "1.04",
    "bs88_2_6": "8.21", "bs88_2_10": "4.89", "bs88_2_16": "2.56", "bs88_2_20": "1.77", "bs88_2_25": "1.35", "bs88_2_32": "1.04",
    "bs1361_5": "10.45", "bs1361_20": "1.70", "bs3036_15": "2.55", "bs3036_20": "1.77", "bs3036_30": "1.09", "bs1362_3": "16.4", "bs1362_13": "2.42",
}


@electrical
def fuse_operating_current(fuse, disconnection_time_s):
    return 230 / D({"0.4": TABLE_41_2, "5": {"bs1361_30": "1.84"}}[disconnection_time_s][fuse])


@electrical
def conventional_operating_current(device, rating_a):
    # IEC 60898-1, IEC 60269-1 Table 2, BS 1361, BS 3036. memory
    return D({"breaker": "1.45", "gg_16_up": "1.6", "gg_4_to_16": "1.9", "gg_to_4": "2.1", "bs1361": "1.5", "bs3036": 2}[device]) * mp.mpf(rating_a)


@electrical
def cold_loop_limit(limit_ohm):
    return D("0.8") * mp.mpf(limit_ohm)


@electrical
def earth_resistance_limit(residual_current_ma, touch_voltage_v=50):
    # RA IdN <= 50 V, IEC 60364-4-41 411.5.3
    return mp.mpf(touch_voltage_v) * 1000 / residual_current_ma


@electrical
def touch_voltage(voltage_v, external_ohm, line_ohm, protective_ohm):
    # Ut = U0 R2/(Ze + R1 + R2)
    return mp.mpf(voltage_v) / (1 + (mp.mpf(external_ohm) + line_ohm) / protective_ohm)


@electrical
def bonding_resistance_limit(operating_current_a, touch_voltage_v=50):
    return mp.mpf(touch_voltage_v) / operating_current_a


@electrical
def extraneous_part_resistance(voltage_v, body_current_ma, body_impedance_ohm=1000):
    # U0/IB - ZB
    return mp.mpf(voltage_v) * 1000 / body_current_ma - body_impedance_ohm


@electrical
def protective_conductor_area(line_area_mm2):
    # Table 54.7: S to 16, 16 from there to 35, half above
    s = mp.mpf(line_area_mm2)
    return s if s <= 16 else mp.mpf(16) if s <= 35 else s / 2


@electrical
def joint_resistance_under_load(drop_v, current_a):
    return mp.mpf(drop_v) / current_a


@electrical
def joint_heating(resistance_ohm, current_a):
    return mp.mpf(current_a) ** 2 * resistance_ohm


@electrical
def residual_share(leakage_ma, residual_current_ma):
    return 100 * mp.mpf(leakage_ma) / residual_current_ma


@electrical
def cooker_demand(connected_a, socket):
    # Whitfield Table 6.2: 10 A + 30 % of the rest + 5 A if there is a socket
    i = mp.mpf(connected_a)
    return min(i, mp.mpf(10)) + D("0.3") * max(i - 10, mp.mpf(0)) + (5 if socket == "with_socket" else 0)


@electrical
def heating_demand(connected_a):
    # 100 % to 10 A + 50 % of the balance
    i = mp.mpf(connected_a)
    return i if i <= 10 else 5 + i / 2


@electrical
def lighting_demand(connected_a):
    return D("0.66") * mp.mpf(connected_a)


@electrical
def circuits_demand(largest_a, others_a):
    return mp.mpf(largest_a) + D("0.4") * mp.mpf(others_a)
@electrical
def murray_loop_distance(sound_arm_ohm, faulty_arm_ohm, length_m):
    # balance: Ra Rx = Rb (2 R - Rx), so Rx / (2 R) = Rb / (Ra + Rb); uniform loop of twice the length
    share = 1 / (1 + mp.mpf(sound_arm_ohm) / faulty_arm_ohm) if faulty_arm_ohm else mp.mpf(0)
    return share * 2 * length_m


@electrical
def murray_loop_distance_unequal(sound_arm_ohm, faulty_arm_ohm, length_m, faulty_mohm_per_m, return_mohm_per_m):
    # the same share of the loop's resistance, which is L (rf + rr), walked along the faulty core
    share = mp.mpf(faulty_arm_ohm) / (mp.mpf(sound_arm_ohm) + faulty_arm_ohm)
    return share * (length_m * (mp.mpf(faulty_mohm_per_m) + return_mohm_per_m)) / faulty_mohm_per_m


@electrical
def varley_loop_distance(earth_reading_ohm, loop_reading_ohm, length_m, lead_ohm=0):
    # equal arms: Rf = 2 Rc + 2 Rl; Ri + Rx = 2 Rc - Rx (a lead on either side); x = L Rx / Rc
    core = (mp.mpf(loop_reading_ohm) - 2 * mp.mpf(lead_ohm)) / 2
    to_fault = core - mp.mpf(earth_reading_ohm) / 2
    return length_m * to_fault / core


@electrical
def varley_loop_resistance(sound_arm_ohm, faulty_arm_ohm, added_ohm, loop_ohm):
    # P (R + Rx) = Q (Rloop - Rx)
    p, q = mp.mpf(sound_arm_ohm), mp.mpf(faulty_arm_ohm)
    return (q * loop_ohm - p * added_ohm) / (p + q)


@electrical
def capacitance_break_distance(near_nf, far_nf, length_m):
    # C in proportion to length: C1/C2 = x/(L - x)
    return length_m / (1 + mp.mpf(far_nf) / near_nf) if near_nf else mp.mpf(0)


@electrical
def capacitance_break_distance_sound_core(broken_nf, sound_nf, length_m):
    return mp.mpf(broken_nf) / (mp.mpf(sound_nf) / length_m)


@electrical
def resistance_short_distance(loop_reading_ohm, loop_mohm_per_m, lead_ohm=0):
    return 1000 * (mp.mpf(loop_reading_ohm) - lead_ohm) / loop_mohm_per_m


@electrical
def resistance_short_distance_both_ends(near_reading_ohm, far_reading_ohm, length_m, loop_mohm_per_m):
    # R1 = r x + F, R2 = r (L - x) + F: the difference is r (2 x - L)
    per_metre = mp.mpf(loop_mohm_per_m) / 1000
    return (mp.mpf(near_reading_ohm) - far_reading_ohm + per_metre * length_m) / (2 * per_metre)


LIGHT_M_PER_NS = D("0.299792458")  # exact, SI


@electrical
def reflection_distance(velocity_factor, round_trip_ns):
    return mp.mpf(velocity_factor) * LIGHT_M_PER_NS * round_trip_ns / 2


@electrical
def velocity_factor_from_length(length_m, round_trip_ns):
    return 2 * mp.mpf(length_m) / round_trip_ns / LIGHT_M_PER_NS


@electrical
def velocity_factor_from_permittivity(permittivity):
    return mp.mpf(permittivity) ** mp.mpf("-0.5")


@electrical
def insulation_of_two(first_mohm, second_mohm):
    return 1 / (1 / mp.mpf(first_mohm) + 1 / mp.mpf(second_mohm))


@electrical
def unknown_branch_insulation(total_mohm, rest_mohm):
    return 1 / (1 / mp.mpf(total_mohm) - 1 / mp.mpf(rest_mohm))


@electrical
def insulation_of_length(resistance_mohm, length_m, wanted_length_m):
    # leakage per metre is the same
    return 1 / (1 / (mp.mpf(resistance_mohm) * length_m) * wanted_length_m) if resistance_mohm else mp.mpf(0)


@electrical
def insulation_at_temperature(resistance_mohm, temperature_c, wanted_c, halving_k=10):
    # rule of thumb of the trade: half for each 10 K
    return resistance_mohm / mp.mpf(2) ** ((mp.mpf(wanted_c) - temperature_c) / halving_k)


@electrical
def polarisation_index(after_10_min_mohm, after_1_min_mohm):
    return mp.mpf(after_10_min_mohm) / after_1_min_mohm


@electrical
def insulation_test_voltage(circuit_kind):
    # IEC 60364-6 Table 6.1; 250 V beside a surge device that stays: memory
    return mp.mpf({"selv_pelv": 250, "up_to_500_v": 500, "above_500_v": 1000, "up_to_500_v_surge_device": 250}[circuit_kind])


# mV/(A m), BS 7671 Tables 4D2B and 4E4B, 1 to 16 mm2
CABLE_DROPS = {
    "pvc_2": (44, 29, 18, 11, "7.3", "4.4", "2.8"),
    "pvc_3": (38, 25, 15, "9.5", "6.4", "3.8", "2.4"),
    "xlpe_2": (46, 31, 19, 12, "7.9", "4.7", "2.9"),
    "xlpe_3": (40, 27, 16, 10, "6.8", 4, "2.5"),
}
# BS 7671 Tables 4F3A and 4F3B: single-phase A, three-phase A, mV/(A m)
CORDS = {"0.5": (3, 3, 93), "0.75": (6, 6, 62), "1": (10, 10, 46), "1.25": (13, None, None), "1.5": (16, 16, 32), "2.5": (25, 20, 19), "4": (32, 25, 12)}


@electrical
def tabulated_voltage_drop(cable, area_mm2):
    return D(CABLE_DROPS[cable][SIZES_4D5.index(size(area_mm2))])


@electrical
def flex_capacity(area_mm2, phases="single"):
    return D(CORDS[size(area_mm2)][phases == "three"])


@electrical
def flex_voltage_drop(area_mm2):
    return D(CORDS[size(area_mm2)][2])


@electrical
def awg_diameter(gauge):
    # 0.46 in at 4/0 and 0.005 in at 36, and 39 equal ratios between
    inches = D("0.46") * (D("0.005") / D("0.46")) ** ((mp.mpf(gauge) + 3) / 39)
    return inches * D("25.4")


@electrical
def awg_area(gauge):
    return mp.pi / 4 * awg_diameter(gauge) ** 2


@electrical
def awg_gauge(diameter_mm):
    return 39 * mp.log(D("0.46") * D("25.4") / diameter_mm) / mp.log(92) - 3


@electrical
def conductor_resistivity(material, temperature_c=20):
    # ohm mm2/m at 20 C, and -beta where the straight line would vanish
    at_20, beta = {"copper": ("0.017241", "234.5"), "aluminium": ("0.028264", 228), "steel": ("0.138", 202), "lead": ("0.214", 230)}[material]
    return D(at_20) + D(at_20) / (D(beta) + 20) * (mp.mpf(temperature_c) - 20)


@electrical
def resistance_from_resistivity(resistivity_ohm_mm2_per_m, area_mm2, lay_factor=1):
    return 1000 * mp.mpf(resistivity_ohm_mm2_per_m) * lay_factor / area_mm2


@electrical
def spread_voltage_drop(resistance_mohm_per_m, spread_length_m, current_a, unloaded_length_m=0):
    # integral of z i(s) ds: the whole current up to the first load, then falling evenly to nothing
    z, i = mp.mpf(resistance_mohm_per_m) / 1000, mp.mpf(current_a)
    return z * i * unloaded_length_m + z * (i * spread_length_m - i * spread_length_m / 2)


@electrical
def ring_spread_voltage_drop(resistance_mohm_per_m, ring_length_m, current_a, position_ratio=D("0.5")):
    # half of the load enters at each end; at s from the board the leg still carries I/2 - I s/L: integral to x L
    z, i, x = mp.mpf(resistance_mohm_per_m) / 1000, mp.mpf(current_a), mp.mpf(position_ratio)
    s = x * ring_length_m
    return z * (i / 2 * s - i * s**2 / (2 * ring_length_m))


@electrical
def ring_assumed_current(rating_a, far_point_a=20):
    return mp.mpf(far_point_a) + (mp.mpf(rating_a) - far_point_a) / 2


@electrical
def ring_leg_current(ring_length_m, distance_m, current_a):
    # two resistances in parallel: the other way is L - x long
    one_way, other_way = mp.mpf(distance_m), mp.mpf(ring_length_m) - distance_m
    return current_a * other_way / (one_way + other_way)


@electrical
def longest_run_by_drop(drop_limit_v, drop_mv_per_a_m, current_a, temperature_factor=1):
    return 1000 * mp.mpf(drop_limit_v) / drop_mv_per_a_m / current_a / temperature_factor


@electrical
def longest_ring_by_drop(drop_limit_v, drop_mv_per_a_m, current_a, temperature_factor=1):
    # both legs of a load in the middle carry half of it over half the length
    return longest_run_by_drop(drop_limit_v, drop_mv_per_a_m, mp.mpf(current_a) / 2, temperature_factor) * 2


@electrical
def longest_run_by_loop(loop_limit_ohm, external_ohm, r1_plus_r2_mohm_per_m, temperature_factor=D("1.2")):
    return 1000 * (mp.mpf(loop_limit_ohm) - external_ohm) / r1_plus_r2_mohm_per_m / temperature_factor


@electrical
def longest_ring_by_loop(loop_limit_ohm, external_ohm, r1_plus_r2_mohm_per_m, temperature_factor=D("1.2")):
    # in the middle two halves of the ring in parallel: a quarter of the loop all round
    return 4 * longest_run_by_loop(loop_limit_ohm, external_ohm, r1_plus_r2_mohm_per_m, temperature_factor)


# ------------------------------------------------------------------- sensing

@sensing
def ntc_resistance(temperature_c, reference_ohm, reference_c, beta_k):
    # two-parameter thermistor equation: R = R0 exp(B (1/T - 1/T0))
    return reference_ohm * mp.exp(beta_k * (1 / _kelvin(temperature_c) - 1 / _kelvin(reference_c)))


@sensing
def ntc_temperature(resistance_ohm, reference_ohm, reference_c, beta_k):
    inverse = 1 / _kelvin(reference_c) + mp.log(mp.mpf(resistance_ohm) / reference_ohm) / beta_k
    return 1 / inverse - ZERO_CELSIUS_K


@sensing
def beta_from_two_points(temperature_1_c, resistance_1_ohm, temperature_2_c, resistance_2_ohm):
    ratio = mp.log(mp.mpf(resistance_1_ohm) / resistance_2_ohm)
    return ratio / (1 / _kelvin(temperature_1_c) - 1 / _kelvin(temperature_2_c))


@sensing
def steinhart_hart_temperature(resistance_ohm, a, b, c):
    # Steinhart and Hart, Deep-Sea Research 15 (1968) 497: 1/T = a + b ln R + c (ln R)^3
    x = mp.log(resistance_ohm)
    return 1 / (a + b * x + c * x**3) - ZERO_CELSIUS_K


@sensing
def steinhart_hart_resistance(temperature_c, a, b, c):
    # root in ln R of the same equation, the one that goes over into the straight line as c goes to 0: the closed form of a
    # depressed cubic with hyperbolic (c > 0) or circular (c < 0) functions, NIST Digital Library of Mathematical
    # Functions 4.43 and 1.11(iii) (memory)
    target = 1 / _kelvin(temperature_c) - a
    b, c = mp.mpf(b), mp.mpf(c)
    if c == 0:
        x = target / b
    else:
        p = mp.sqrt(b / (3 * abs(c)))
        q = 3 * target / (2 * b * p)
        x = 2 * p * mp.sinh(mp.asinh(q) / 3) if c > 0 else 2 * p * mp.sin(mp.asin(q) / 3)
    return mp.exp(x)


@sensing
def fit_steinhart_hart(points):
    # three points: linear system in 1, ln R, (ln R)^3; more: unweighted least squares of 1/T. Returns (a, b, c)
    rows, right = [], []
    for temperature_c, resistance_ohm in points:
        x = mp.log(resistance_ohm)
        rows.append([1, x, x**3])
        right.append(1 / _kelvin(temperature_c))
    solution = mp.lu_solve(mp.matrix(rows), mp.matrix(right))
    return tuple(solution)


# IEC 60751: Callendar-Van Dusen coefficients
RTD_A, RTD_B, RTD_C = D("3.9083e-3"), D("-5.775e-7"), D("-4.183e-12")


@sensing
def rtd_resistance(temperature_c, r0_ohm):
    t = mp.mpf(temperature_c)
    ratio = 1 + RTD_A * t + RTD_B * t**2
    if t < 0:
        ratio += RTD_C * (t - 100) * t**3
    return r0_ohm * ratio


@sensing
def rtd_temperature(resistance_ohm, r0_ohm):
    ratio = mp.mpf(resistance_ohm) / r0_ohm
    if ratio >= 1:
        return (-RTD_A + mp.sqrt(RTD_A**2 - 4 * RTD_B * (1 - ratio))) / (2 * RTD_B)
    start = D("255.819") * (ratio - 1) + D("9.1455") * (ratio - 1)**2      # first terms of the GOST 6651 inverse
    return mp.findroot(lambda t: rtd_resistance(t, 1) - ratio, start, solver="secant")


@sensing
def rtd_tolerance(tolerance_class, temperature_c):
    # IEC 60751: AA, A, B; C after a secondary print
    fixed, slope = {"AA": ("0.1", "0.0017"), "A": ("0.15", "0.002"), "B": ("0.3", "0.005"), "C": ("0.6", "0.01")}[tolerance_class]
    return D(fixed) + D(slope) * abs(mp.mpf(temperature_c))


# coefficients of the silicon spreading-resistance type: memory, no open standard found
@sensing
def silicon_ptc_resistance(temperature_c, reference_ohm, a_per_k=D("7.88e-3"), b_per_k2=D("1.937e-5")):
    rise = mp.mpf(temperature_c) - 25
    return reference_ohm * (1 + a_per_k * rise + b_per_k2 * rise**2)


@sensing
def silicon_ptc_temperature(resistance_ohm, reference_ohm, a_per_k=D("7.88e-3"), b_per_k2=D("1.937e-5")):
    excess = mp.mpf(resistance_ohm) / reference_ohm - 1
    return 25 + 2 * excess / (a_per_k + mp.sqrt(mp.mpf(a_per_k)**2 + 4 * b_per_k2 * excess))  # root also where b is 0

# GOST 6651-2009 (OIML R 84): copper 0.00428 and nickel 0.00617
def _metal_ratio(metal, t):
    if metal == "copper":
        ratio = 1 + D("4.28e-3") * t
        return ratio if t >= 0 else ratio + D("-6.2032e-7") * t * (t + D("6.7")) + D("8.5154e-10") * t**3
    ratio = 1 + D("5.4963e-3") * t + D("6.7556e-6") * t**2
    return ratio if t <= 100 else ratio + D("9.2004e-9") * (t - 100) * t**2


@sensing
def metal_resistance(metal, temperature_c, r0_ohm):
    return r0_ohm * _metal_ratio(metal, mp.mpf(temperature_c))


@sensing
def metal_temperature(metal, resistance_ohm, r0_ohm):
    ratio = mp.mpf(resistance_ohm) / r0_ohm
    if ratio == 1:
        return mp.mpf(0)
    start = (ratio - 1) / (D("4.3e-3") if metal == "copper" else D("5.8e-3"))
    return mp.findroot(lambda t: _metal_ratio(metal, t) - ratio, (start, start * D("1.01")), solver="secant", tol=D("1e-90"), verify=False, maxsteps=60)


# temperature coefficients at 20 C: handbook table (first six); DIN 17471 and 17470, memory (middle of what is stated)
ALLOYS = {
    "copper": "4.041e-3", "nickel": "5.866e-3", "constantan": "-7.4e-5", "nichrome": "1.7e-4", "manganin": "1.5e-5", "platinum": "3.729e-3", "CuNi2": "1.3e-3",
    "CuNi6": "7e-4", "CuNi10": "4e-4", "CuNi23Mn": "2.5e-4", "CuNi44": "-2e-5", "NiCr80-20": "1e-4", "CrAl25-5": "3.5e-5", "unknown": "2e-3",
}


@sensing
def alloy_resistance(alloy, temperature_c, resistance_20_ohm):
    return resistance_20_ohm * (1 + D(ALLOYS[alloy]) * (mp.mpf(temperature_c) - 20))


@sensing
def alloy_resistance_20(alloy, temperature_c, resistance_ohm):
    return resistance_ohm / (1 + D(ALLOYS[alloy]) * (mp.mpf(temperature_c) - 20))


@sensing
def lead_resistance_error_k(lead_ohm, slope_ohm_per_k):
    return mp.mpf(lead_ohm) / slope_ohm_per_k


@sensing
def rtd_lead_error_k(temperature_c, lead_ohm, r0_ohm):
    # what the reading says, less what is true: a difference that a lead of 1e-300 ohm leaves 600 digits behind
    with mp.workdps(700):
        return rtd_temperature(rtd_resistance(temperature_c, mp.mpf(r0_ohm)) + lead_ohm, r0_ohm) - temperature_c


@sensing
def ntc_lead_error_k(temperature_c, lead_ohm, reference_ohm, reference_c, beta_k):
    with mp.workdps(700):  # see rtd_lead_error_k
        true = ntc_resistance(temperature_c, reference_ohm, reference_c, beta_k)
        return ntc_temperature(true + lead_ohm, reference_ohm, reference_c, beta_k) - temperature_c


@sensing
def ntc_shunt_error_k(temperature_c, shunt_ohm, reference_ohm, reference_c, beta_k):
    with mp.workdps(700):  # see rtd_lead_error_k
        true = ntc_resistance(temperature_c, reference_ohm, reference_c, beta_k)
        return ntc_temperature(1 / (1 / true + 1 / mp.mpf(shunt_ohm)), reference_ohm, reference_c, beta_k) - temperature_c


@sensing
def shunted_resistance(resistance_ohm, shunt_ohm):
    return 1 / (1 / mp.mpf(resistance_ohm) + 1 / mp.mpf(shunt_ohm))


@sensing
def shunt_resistance(resistance_ohm, reading_ohm):
    return 1 / (1 / mp.mpf(reading_ohm) - 1 / mp.mpf(resistance_ohm))


@sensing
def self_heating_k(power_mw, dissipation_mw_per_k):
    return mp.mpf(power_mw) / dissipation_mw_per_k


@sensing
def divider_sensor_power(supply_v, series_ohm, resistance_ohm):
    r = mp.mpf(resistance_ohm)
    return 1000 * mp.mpf(supply_v)**2 * r / (series_ohm + r)**2


@sensing
def ntc_sensitivity(temperature_c, beta_k):
    return -100 * mp.mpf(beta_k) / _kelvin(temperature_c)**2


def _ntc_parts(temperature_c, beta_k, resistance_tolerance_percent, beta_tolerance_percent, reference_c):
    t, t0 = _kelvin(temperature_c), _kelvin(reference_c)
    return t**2 / beta_k * resistance_tolerance_percent / 100, abs(t * (1 - t / t0)) * beta_tolerance_percent / 100


@sensing
def ntc_tolerance(temperature_c, beta_k, resistance_tolerance_percent, beta_tolerance_percent, reference_c=25):
    return sum(_ntc_parts(temperature_c, beta_k, resistance_tolerance_percent, beta_tolerance_percent, reference_c))


@sensing
def ntc_tolerance_standard(temperature_c, beta_k, resistance_tolerance_percent, beta_tolerance_percent, reference_c=25):
    a, b = _ntc_parts(temperature_c, beta_k, resistance_tolerance_percent, beta_tolerance_percent, reference_c)
    return mp.sqrt((a / mp.sqrt(3))**2 + (b / mp.sqrt(3))**2)


@sensing
def rtd_tolerance_ohm(tolerance_class, temperature_c, r0_ohm):
    t = mp.mpf(temperature_c)
    slope = RTD_A + 2 * RTD_B * t + (RTD_C * (4 * t**3 - 300 * t**2) if t < 0 else 0)
    return rtd_tolerance(tolerance_class, t) * slope * r0_ohm


@sensing
def switching_ptc_coefficient(temperature_1_c, resistance_1_ohm, temperature_2_c, resistance_2_ohm):
    return 100 * mp.log(mp.mpf(resistance_2_ohm) / resistance_1_ohm) / (mp.mpf(temperature_2_c) - temperature_1_c)


# ------------------------------------------------------------------- heating

@heating
def element_resistance(power_w, voltage_v):
    # P = U^2/R
    return mp.mpf(voltage_v)**2 / power_w


@heating
def element_power(resistance_ohm, voltage_v):
    return mp.mpf(voltage_v)**2 / resistance_ohm


@heating
def element_current(power_w, voltage_v):
    return mp.mpf(power_w) / voltage_v


@heating
def power_at_voltage(rated_power_w, rated_voltage_v, voltage_v):
    # constant resistance: the power goes with the square of the voltage
    return rated_power_w * (mp.mpf(voltage_v) / rated_voltage_v)**2


@heating
def parallel_element_resistance(power_w, voltage_v, mats_count):
    # 1/R = sum of 1/Ri
    return mp.mpf(voltage_v)**2 / power_w / mats_count


@heating
def power_density(power_w, area_m2):
    return mp.mpf(power_w) / area_m2


@heating
def floor_heat_flux(surface_c, room_c):
    # EN 1264-2, ISO 11855-2 formula (1): q = 8.92 (theta_F - theta_i)^1.1
    return D("8.92") * mp.power(mp.mpf(surface_c) - room_c, D("1.1"))


@heating
def floor_surface_temperature(flux_w_per_m2, room_c):
    return room_c + mp.power(flux_w_per_m2 / D("8.92"), 1 / D("1.1"))


@heating
def heated_area(length_m, width_m, fixed_area_m2=0, margin_m=0):
    return (mp.mpf(length_m) - 2 * mp.mpf(margin_m)) * (mp.mpf(width_m) - 2 * mp.mpf(margin_m)) - fixed_area_m2


@heating
def cable_power_density(power_w_per_m, spacing_mm):
    return mp.mpf(power_w_per_m) / (mp.mpf(spacing_mm) / 1000)


@heating
def cable_spacing(length_m, area_m2):
    return 1000 * mp.mpf(area_m2) / length_m


@heating
def shorted_fraction(resistance_ohm, rated_ohm):
    return 1 - mp.mpf(resistance_ohm) / rated_ohm


@heating
def shorted_power(power_w, fraction):
    return mp.mpf(power_w) / (1 - mp.mpf(fraction))


@heating
def shorted_loading(fraction):
    # power of the rest over its length
    return 1 / (1 - mp.mpf(fraction))**2


@heating
def missing_parallel_mats(resistance_ohm, power_w, voltage_v, mats_count):
    # conductances add: those that are there are R_one/R
    return mats_count - mp.mpf(voltage_v)**2 / power_w / resistance_ohm


@heating
def screen_fault_position(loop_ohm, first_ohm, second_ohm, tail_ohm=0):
    # R1 = Rt + x Re + Rf, R2 = Rt + (1 - x) Re + Rf, Rl = 2 Rt + Re
    element = mp.mpf(loop_ohm) - 2 * mp.mpf(tail_ohm)
    return (element + first_ohm - second_ohm) / (2 * element)


@heating
def screen_fault_resistance(loop_ohm, first_ohm, second_ohm):
    return (mp.mpf(first_ohm) + second_ohm - loop_ohm) / 2


@heating
def highest_power_input(appliance, rated_power_w):
    # IEC 335-1:1991, 10.1, Table 1
    p = mp.mpf(rated_power_w)
    if p <= 25:
        return p * D("1.2")
    if appliance == "heating":
        return p * D("1.1") if p <= 200 else max(p * D("1.05"), p + 20)
    return p * D("1.2") if p <= 300 else max(p * D("1.15"), p + 60)


@heating
def least_power_input(rated_power_w):
    return mp.mpf(rated_power_w) * D("0.9")


@heating
def floor_limit_factor(highest_surface_c, room_c):
    return mp.power((mp.mpf(highest_surface_c) - room_c) / 9, D("1.1"))


@heating
def surface_heat_flux(surface, surface_c, room_c):
    return D({"wall": 8, "ceiling_heating": 6, "floor_cooling": 7, "floor_layers": "10.8"}[surface]) * (mp.mpf(surface_c) - room_c)


@heating
def upward_resistance(covering_m2k_per_w, over_mm, conductivity_w_per_m_k):
    return 1 / D("10.8") + covering_m2k_per_w + mp.mpf(over_mm) / 1000 / conductivity_w_per_m_k


@heating
def downward_flux(flux_w_per_m2, up_m2k_per_w, down_m2k_per_w, room_c, below_c):
    # ISO 11855-2 (A.29)
    return (mp.mpf(up_m2k_per_w) * flux_w_per_m2 + room_c - below_c) / down_m2k_per_w


@heating
def upward_flux(power_w_per_m2, up_m2k_per_w, down_m2k_per_w, room_c, below_c):
    # the source lies at a temperature between two resistances: p = (t - ti)/Ro + (t - tu)/Ru, q = (t - ti)/Ro
    with mp.workdps(700):  # a resistance may be 1e-300, and the two temperatures differ by as little
        ro, ru = mp.mpf(up_m2k_per_w), mp.mpf(down_m2k_per_w)
        source_c = (power_w_per_m2 + room_c / ro + below_c / ru) / (1 / ro + 1 / ru)
        return (source_c - room_c) / ro


# EN 12524: conductivity, density, heat capacity; screed, plasterboard's and XPS's heat capacity memory
MATERIALS = {
    "ceramic_tile": ("1.3", 2300, 840), "clay_tile": (1, 2000, 800), "concrete_high": (2, 2400, 1000), "concrete": ("1.35", 2000, 1000),
    "concrete_reinforced": ("2.3", 2300, 1000), "cement_screed": ("1.4", 2000, 1000), "plywood": ("0.13", 500, 1600), "anhydrite_screed": ("1.2", 2100, 1000), "mortar": (1, 1800, 1000), "plywood_heavy": ("0.17", 700, 1600),
    "chipboard_heavy": ("0.18", 900, 1700), "carpet": ("0.06", 200, 1300), "extruded_foam": ("0.033", 35, 1450), "chipboard": ("0.14", 600, 1700),
    "cement_board": ("0.23", 1200, 1500), "osb": ("0.13", 650, 1700), "timber": ("0.13", 500, 1600), "plasterboard": ("0.25", 900, 1000), "linoleum": ("0.17", 1200, 1400),
    "vinyl": ("0.25", 1700, 1400), "marble": ("3.5", 2800, 1000), "granite": ("2.8", 2600, 1000), "limestone": ("1.7", 2200, 1000), "glass": (1, 2500, 750), "xps": ("0.026", "32.5", 1450),
}


@heating
def material_conductivity(material):
    return D(MATERIALS[material][0])


@heating
def material_density(material):
    return D(MATERIALS[material][1])


@heating
def material_heat_capacity(material):
    return D(MATERIALS[material][2])


@heating
def thermal_resistance(thickness_mm, conductivity_w_per_m_k):
    return mp.mpf(thickness_mm) / 1000 / conductivity_w_per_m_k


@heating
def surface_resistance(convection_w_per_m2_k, radiation_w_per_m2_k):
    # ISO 6946: 1/(hc + hr)
    return 1 / (mp.mpf(convection_w_per_m2_k) + radiation_w_per_m2_k)


@heating
def u_value(layers_m2k_per_w, inside_m2k_per_w=D("0.13"), outside_m2k_per_w=D("0.04")):
    return 1 / (mp.mpf(layers_m2k_per_w) + inside_m2k_per_w + outside_m2k_per_w)


@heating
def conduction_heat_flow(conductivity_w_per_m_k, area_m2, thickness_mm, difference_k):
    # Fourier's law
    return mp.mpf(conductivity_w_per_m_k) * area_m2 * difference_k * 1000 / thickness_mm


@heating
def thermal_effusivity(conductivity_w_per_m_k, density_kg_per_m3, heat_capacity_j_per_kg_k):
    return mp.sqrt(mp.mpf(conductivity_w_per_m_k) * density_kg_per_m3 * heat_capacity_j_per_kg_k)


@heating
def contact_temperature(first_effusivity, first_c, second_effusivity, second_c):
    e1, e2 = mp.mpf(first_effusivity), mp.mpf(second_effusivity)
    return (e1 * first_c + e2 * second_c) / (e1 + e2)


SIGMA = D("5.670374419e-8")  # CODATA 2018


@heating
def radiation_coefficient(emissivity, mean_c):
    return 4 * mp.mpf(emissivity) * SIGMA * _kelvin(mean_c)**3


@heating
def radiation_heat_flow(emissivity, area_m2, surface_c, surroundings_c):
    return mp.mpf(emissivity) * SIGMA * area_m2 * (_kelvin(surface_c)**4 - _kelvin(surroundings_c)**4)


@heating
def plate_radiation(first_emissivity, second_emissivity, area_m2, first_c, second_c):
    return SIGMA * area_m2 * (_kelvin(first_c)**4 - _kelvin(second_c)**4) / (1 / mp.mpf(first_emissivity) + 1 / mp.mpf(second_emissivity) - 1)


@heating
def rayleigh_number(difference_k, length_mm, expansion_per_k, viscosity_m2_per_s, diffusivity_m2_per_s):
    return D("9.80665") * mp.mpf(expansion_per_k) * difference_k * (mp.mpf(length_mm) / 1000)**3 / viscosity_m2_per_s / diffusivity_m2_per_s


@heating
def vertical_plate_nusselt(rayleigh, prandtl):
    # Churchill and Chu 1975, all Ra
    bracket = 1 + mp.power(D("0.492") / prandtl, D(9) / 16)
    return (D("0.825") + D("0.387") * mp.power(rayleigh, D(1) / 6) / mp.power(bracket, D(8) / 27))**2


@heating
def vertical_plate_nusselt_laminar(rayleigh, prandtl):
    bracket = 1 + mp.power(D("0.492") / prandtl, D(9) / 16)
    return D("0.68") + D("0.670") * mp.power(rayleigh, D(1) / 4) / mp.power(bracket, D(4) / 9)


@heating
def horizontal_cylinder_nusselt(rayleigh, prandtl):
    bracket = 1 + mp.power(D("0.559") / prandtl, D(9) / 16)
    return (D("0.6") + D("0.387") * mp.power(rayleigh, D(1) / 6) / mp.power(bracket, D(8) / 27))**2


@heating
def plate_below_nusselt(rayleigh):
    return D("0.27") * mp.power(rayleigh, D(1) / 4)


@heating
def convection_coefficient(nusselt, conductivity_w_per_m_k, length_mm):
    return mp.mpf(nusselt) * conductivity_w_per_m_k * 1000 / length_mm


@heating
def vertical_plate_coefficient(surface_c, air_c, height_mm):
    # U.S. Standard Atmosphere 1976: viscosity and conductivity of air; ideal gas of 287.05 J/(kg K) at 101325 Pa, 1007 J/(kg K)
    t = (_kelvin(surface_c) + _kelvin(air_c)) / 2
    rho = 101325 / (D("287.05") * t)
    nu = D("1.458e-6") * t**D("1.5") / (t + D("110.4")) / rho
    k = D("2.64638e-3") * t**D("1.5") / (t + D("245.4") * mp.power(10, -12 / t))
    alpha = k / (rho * 1007)
    length = mp.mpf(height_mm) / 1000
    ra = D("9.80665") / t * (mp.mpf(surface_c) - air_c) * length**3 / (nu * alpha)
    return vertical_plate_nusselt(ra, nu / alpha) * k / length


@heating
def air_heat_factor(density_kg_per_m3, heat_capacity_j_per_kg_k):
    return mp.mpf(density_kg_per_m3) * heat_capacity_j_per_kg_k / 3600


@heating
def ventilation_coefficient(volume_m3, air_changes_per_h, air_factor=D("0.33")):
    return air_factor * mp.mpf(air_changes_per_h) * volume_m3


@heating
def element_heat_loss(u_value, area_m2, inside_c, outside_c):
    return mp.mpf(u_value) * area_m2 * (mp.mpf(inside_c) - outside_c)


@heating
def room_heat_loss(fabric_w_per_k, volume_m3, air_changes_per_h, inside_c, outside_c, air_factor=D("0.33")):
    return (mp.mpf(fabric_w_per_k) + air_factor * mp.mpf(air_changes_per_h) * volume_m3) * (mp.mpf(inside_c) - outside_c)


@heating
def steady_temperature(power_w, loss_w_per_k, outside_c):
    return outside_c + mp.mpf(power_w) / loss_w_per_k


@heating
def warm_up_time(capacity_j_per_k, power_w, loss_w_per_k, start_c, target_c, surroundings_c):
    # C dT/dt = P - H (T - Te)
    c, h = mp.mpf(capacity_j_per_k), mp.mpf(loss_w_per_k)
    end = surroundings_c + power_w / h
    return c / h * mp.log((end - start_c) / (end - target_c))


@heating
def running_cost(power_w, time_h, price_per_kwh, duty_ratio=1):
    return mp.mpf(power_w) / 1000 * time_h * duty_ratio * price_per_kwh


@heating
def mean_excess(flow_c, return_c, room_c):
    return (mp.mpf(flow_c) + return_c) / 2 - room_c


@heating
def log_mean_excess(flow_c, return_c, room_c):
    return (mp.mpf(flow_c) - return_c) / mp.log((mp.mpf(flow_c) - room_c) / (mp.mpf(return_c) - room_c))


@heating
def radiator_output(rated_output_w, excess_k, exponent=D("1.3"), rated_excess_k=50):
    # EN 442: K dT^n
    return rated_output_w * mp.power(mp.mpf(excess_k) / rated_excess_k, exponent)


@heating
def rail_surface_temperature(power_w, rated_output_w, room_c, exponent=D("1.3"), rated_excess_k=50):
    return room_c + rated_excess_k * mp.power(mp.mpf(power_w) / rated_output_w, 1 / mp.mpf(exponent))


@heating
def burn_threshold(surface, contact):
    # ISO 13732-1 figures: 1 s lower end of the band (memory), 1 min, 10 min, 8 h (memory)
    row = {"bare_metal": (65, 51), "coated_metal": (65, 51), "ceramic": (80, 56), "plastic": (85, 60), "wood": (110, 60)}[surface]
    return mp.mpf({"second": row[0], "minute": row[1], "ten_minutes": 48, "hours": 43}[contact])


@heating
def mirror_clear_power(air_c, relative_humidity_percent, glass_c, area_m2, coefficient_w_per_m2_k=8, back_w_per_m2_k=0, margin_k=1):
    # WMO Magnus form of the dew point; balance of the pane
    rise = dew_point_magnus(air_c, relative_humidity_percent) + margin_k - glass_c
    return (mp.mpf(coefficient_w_per_m2_k) + back_w_per_m2_k) * area_m2 * max(rise, mp.mpf(0))


GLASS_J_PER_M3_K = mp.mpf(2500) * 750  # EN 12524


@heating
def mirror_clear_time(power_w, area_m2, thickness_mm, coefficient_w_per_m2_k, glass_c, target_c):
    capacity = GLASS_J_PER_M3_K * area_m2 * mp.mpf(thickness_mm) / 1000
    return warm_up_time(capacity, power_w, mp.mpf(coefficient_w_per_m2_k) * area_m2, glass_c, target_c, glass_c)


@heating
def pad_temperature_rise(power_w, area_m2, thickness_mm, coefficient_w_per_m2_k, time_s):
    capacity = GLASS_J_PER_M3_K * area_m2 * mp.mpf(thickness_mm) / 1000
    loss = mp.mpf(coefficient_w_per_m2_k) * area_m2
    return -power_w / loss * mp.expm1(-time_s * loss / capacity)


# ----------------------------------------------------------------------- air

@air
def airflow_from_air_changes(room_volume_m3, air_changes_per_h):
    # n = 3600 Q/V, Q in m3/s
    return mp.mpf(room_volume_m3) * air_changes_per_h * 1000 / 3600


@air
def air_changes_from_airflow(flow_l_per_s, room_volume_m3):
    return mp.mpf(flow_l_per_s) * 3600 / 1000 / room_volume_m3


@air
def door_undercut_area(door_width_mm, gap_mm):
    # a rectangle
    return mp.mpf(door_width_mm) * gap_mm


@air
def make_up_air_velocity(flow_l_per_s, area_mm2):
    # continuity: v = Q/A; litres to cubic metres, square millimetres to square metres
    return (mp.mpf(flow_l_per_s) / 1000) / (mp.mpf(area_mm2) / 1000000)


@air
def air_power(flow_l_per_s, pressure_pa):
    return mp.mpf(flow_l_per_s) / 1000 * pressure_pa


@air
def specific_fan_power(power_w, flow_l_per_s):
    return mp.mpf(power_w) / flow_l_per_s


@air
def fan_law_flow(flow_l_per_s, speed_ratio, diameter_ratio=1):
    # equal flow coefficient: Q/(n D^3)
    return mp.mpf(flow_l_per_s) * speed_ratio * mp.power(diameter_ratio, 3)


@air
def fan_law_pressure(pressure_pa, speed_ratio, diameter_ratio=1, density_ratio=1):
    # equal pressure coefficient: p/(rho n^2 D^2)
    return mp.mpf(pressure_pa) * density_ratio * mp.power(mp.mpf(speed_ratio) * diameter_ratio, 2)


@air
def fan_law_power(power_w, speed_ratio, diameter_ratio=1, density_ratio=1):
    # equal power coefficient: P/(rho n^3 D^5)
    return mp.mpf(power_w) * density_ratio * mp.power(speed_ratio, 3) * mp.power(diameter_ratio, 5)


@air
def flow_from_velocity(velocity_m_per_s, area_mm2):
    # continuity: Q = v A; square millimetres to square metres, cubic metres to litres
    return mp.mpf(velocity_m_per_s) * area_mm2 / 10**6 * 1000


@air
def reynolds_number(velocity_m_per_s, diameter_mm, density_kg_per_m3, viscosity_pa_s):
    return mp.mpf(density_kg_per_m3) * velocity_m_per_s * diameter_mm / 1000 / viscosity_pa_s


@air
def friction_factor_colebrook(reynolds, relative_roughness):
    # Colebrook-White: 1/sqrt f = -2 lg(e/(3.7 D) + 2.51/(Re sqrt f)), solved in x = 1/sqrt f
    start = 1 / mp.sqrt(friction_factor_haaland(reynolds, relative_roughness))
    x = mp.findroot(lambda s: s + 2 * mp.log10(relative_roughness / D("3.7") + D("2.51") * s / reynolds), start)
    return 1 / x**2


@air
def friction_factor_churchill(reynolds, relative_roughness):
    # Churchill 1977, all regimes, as a Darcy factor
    re = mp.mpf(reynolds)
    a = (D("2.457") * mp.log(1 / (mp.power(7 / re, D("0.9")) + D("0.27") * relative_roughness)))**16
    b = (37530 / re)**16
    return 8 * mp.power((8 / re)**12 + mp.power(a + b, D("-1.5")), mp.mpf(1) / 12)


@air
def friction_factor_swamee_jain(reynolds, relative_roughness):
    # Swamee and Jain 1976, 5.74 form
    return D("0.25") / mp.log10(relative_roughness / D("3.7") + D("5.74") / mp.power(reynolds, D("0.9")))**2


@air
def friction_factor_haaland(reynolds, relative_roughness):
    # Haaland 1983: 1/sqrt f = -1.8 lg[(e/(3.7 D))^1.11 + 6.9/Re]
    inside = mp.power(relative_roughness / D("3.7"), D("1.11")) + D("6.9") / reynolds
    return 1 / (D("1.8") * mp.log10(inside))**2


@air
def friction_factor(reynolds, relative_roughness):
    # laminar 64/Re to 2300, Churchill in the transition, Colebrook-White from 4000
    if reynolds <= 2300:
        return 64 / mp.mpf(reynolds)
    if reynolds < 4000:
        return friction_factor_churchill(reynolds, relative_roughness)
    return friction_factor_colebrook(reynolds, relative_roughness)


@air
def hydraulic_diameter(width_mm, height_mm):
    # four times area over perimeter
    return 4 * mp.mpf(width_mm) * height_mm / (2 * (mp.mpf(width_mm) + height_mm))


@air
def equivalent_diameter(width_mm, height_mm):
    # Huebscher 1948; ASHRAE Fundamentals 2021 ch. 21 eq. (25)
    product, total = mp.mpf(width_mm) * height_mm, mp.mpf(width_mm) + height_mm
    return D("1.30") * mp.power(product, D("0.625")) / mp.power(total, D("0.25"))


@air
def duct_velocity(flow_l_per_s, diameter_mm):
    area_m2 = mp.pi * (mp.mpf(diameter_mm) / 1000)**2 / 4
    return mp.mpf(flow_l_per_s) / 1000 / area_m2


@air
def duct_velocity_rectangular(flow_l_per_s, width_mm, height_mm):
    # continuity: v = Q/(w h)
    area_m2 = mp.mpf(width_mm) / 1000 * height_mm / 1000
    return mp.mpf(flow_l_per_s) / 1000 / area_m2


@air
def velocity_pressure(velocity_m_per_s, density_kg_per_m3):
    return density_kg_per_m3 * mp.mpf(velocity_m_per_s)**2 / 2


@air
def fitting_pressure_loss(loss_coefficient, velocity_m_per_s, density_kg_per_m3):
    return loss_coefficient * velocity_pressure(velocity_m_per_s, density_kg_per_m3)


def _darcy_weisbach(velocity_m_per_s, diameter_mm, length_m, roughness_mm, density_kg_per_m3, viscosity_pa_s):
    if velocity_m_per_s == 0:
        return mp.mpf(0)                     # limit of the laminar law: 32 mu v L/D^2
    re = reynolds_number(velocity_m_per_s, diameter_mm, density_kg_per_m3, viscosity_pa_s)
    f = friction_factor(re, mp.mpf(roughness_mm) / diameter_mm)
    return f * length_m / (mp.mpf(diameter_mm) / 1000) * velocity_pressure(velocity_m_per_s, density_kg_per_m3)


@air
def duct_pressure_loss(flow_l_per_s, diameter_mm, length_m, roughness_mm, density_kg_per_m3, viscosity_pa_s):
    # Darcy-Weisbach
    velocity = duct_velocity(flow_l_per_s, diameter_mm)
    return _darcy_weisbach(velocity, diameter_mm, length_m, roughness_mm, density_kg_per_m3, viscosity_pa_s)


@air
def duct_pressure_loss_rectangular(flow_l_per_s, width_mm, height_mm, length_m, roughness_mm, density_kg_per_m3, viscosity_pa_s):
    # Darcy-Weisbach with the hydraulic diameter and the true velocity
    velocity = mp.mpf(flow_l_per_s) * 1000 / (mp.mpf(width_mm) * height_mm)
    diameter = hydraulic_diameter(width_mm, height_mm)
    return _darcy_weisbach(velocity, diameter, length_m, roughness_mm, density_kg_per_m3, viscosity_pa_s)


@air
def flexible_duct_multiplier(compression_percent, diameter_mm):
    # ASHRAE Fundamentals 2021 ch. 21 eq. (22): 1 + 0.58 Kc exp(-0.00496 D)
    return 1 + D("0.58") * compression_percent * mp.exp(-D("0.00496") * mp.mpf(diameter_mm))


# Hyland and Wexler 1983 as printed in ASHRAE Fundamentals ch. 1, eqs. (5) and (6)
def _hyland_wexler_ice(temperature_c):
    t = _kelvin(temperature_c)
    return mp.exp(D("-5674.5359") / t + D("6.3925247") - D("0.009677843") * t + D("6.2215701e-7") * t**2
                  + D("2.0747825e-9") * t**3 - D("9.484024e-13") * t**4 + D("4.1635019") * mp.log(t))


def _hyland_wexler_water(temperature_c):
    t = _kelvin(temperature_c)
    return mp.exp(D("-5800.2206") / t + D("1.3914993") - D("0.048640239") * t + D("4.1764768e-5") * t**2
                  - D("1.4452093e-8") * t**3 + D("6.5459673") * mp.log(t))


@air
def saturation_pressure(temperature_c):
    return _hyland_wexler_ice(temperature_c) if temperature_c < 0 else _hyland_wexler_water(temperature_c)


@air
def saturation_pressure_ice(temperature_c):
    return _hyland_wexler_ice(temperature_c)


@air
def saturation_pressure_magnus(temperature_c):
    # WMO-No. 8, Annex 4.B, over water: 6.112 exp(17.62 t/(243.12 + t)) hPa
    t = mp.mpf(temperature_c)
    return D("611.2") * mp.exp(D("17.62") * t / (D("243.12") + t))


@air
def saturation_pressure_iso13788(temperature_c):
    # ISO 13788 Annex E, formulas E.7 (t >= 0) and E.8 (t < 0)
    t = mp.mpf(temperature_c)
    a, b = (D("17.269"), D("237.3")) if t >= 0 else (D("21.875"), D("265.5"))
    return D("610.5") * mp.exp(a * t / (b + t))


@air
def surface_temperature(outside_c, room_c, temperature_factor):
    # ISO 13788: t_si = t_e + f_Rsi (t_i - t_e)
    t_e, t_i, f = mp.mpf(outside_c), mp.mpf(room_c), mp.mpf(temperature_factor)
    return t_e * (1 - f) + f * t_i


@air
def temperature_factor(surface_c, room_c, outside_c):
    # ISO 13788: f_Rsi = (t_si - t_e) / (t_i - t_e)
    t_si, t_i, t_e = mp.mpf(surface_c), mp.mpf(room_c), mp.mpf(outside_c)
    return 1 - (t_i - t_si) / (t_i - t_e)


@air
def surface_relative_humidity(surface_c, room_c, relative_humidity_percent):
    # vapour pressure of the room's air over the saturation pressure at the surface
    p_v = mp.mpf(relative_humidity_percent) / 100 * saturation_pressure_iso13788(room_c)
    return 100 * p_v / saturation_pressure_iso13788(surface_c)


@air
def critical_surface_temperature(room_c, relative_humidity_percent, surface_humidity_percent):
    # the temperature whose saturation pressure is the vapour pressure over the humidity at the surface; each branch of E.7 and E.8 turned round
    p = saturation_pressure_iso13788(room_c) * mp.mpf(relative_humidity_percent) / mp.mpf(surface_humidity_percent)
    l = mp.log(p / D("610.5"))
    a, b = (D("17.269"), D("237.3")) if l >= 0 else (D("21.875"), D("265.5"))
    return b / (a / l - 1) if l else mp.mpf(0)


@air
def vapour_pressure(temperature_c, relative_humidity_percent):
    return saturation_pressure(temperature_c) * relative_humidity_percent / 100


@air
def dew_point(temperature_c, relative_humidity_percent):
    # root of the same saturation formula. Ice and water equations leave a gap of 0.06 Pa at 0 C: inside it, 0 C
    # (the logarithm of the pressure is nearly straight over 1/T: the secant method starts there)
    return dew_point_of(vapour_pressure(temperature_c, relative_humidity_percent))


def dew_point_of(pressure):
    if pressure >= _hyland_wexler_water(0):
        branch = _hyland_wexler_water
    elif pressure <= _hyland_wexler_ice(0):
        branch = _hyland_wexler_ice
    else:
        return mp.mpf(0)
    start = (D("28.9") - mp.log(pressure)) / 6150
    return 1 / mp.findroot(lambda u: mp.log(branch(1 / u - ZERO_CELSIUS_K) / pressure), start) - ZERO_CELSIUS_K


@air
def dew_point_magnus(temperature_c, relative_humidity_percent):
    # WMO form inverted: Td = b g/(a - g), g = ln(RH/100) + a t/(b + t)
    t, a, b = mp.mpf(temperature_c), D("17.62"), D("243.12")
    g = mp.log(mp.mpf(relative_humidity_percent) / 100) + a * t / (b + t)
    return b * g / (a - g)


@air
def relative_humidity(temperature_c, dew_point_c):
    return 100 * saturation_pressure(dew_point_c) / saturation_pressure(temperature_c)


@air
def humidity_ratio(vapour_pressure_pa, pressure_pa):
    # ASHRAE Fundamentals ch. 1: W = 0.621945 pw/(p - pw)
    return D("0.621945") * vapour_pressure_pa / (mp.mpf(pressure_pa) - vapour_pressure_pa)


@air
def air_density(temperature_c, relative_humidity_percent, pressure_pa):
    # ideal mixture of dry air and vapour, gas constants 287.042 and 461.524 J/(kg K) (ASHRAE)
    t, pw = _kelvin(temperature_c), vapour_pressure(temperature_c, relative_humidity_percent)
    return (pressure_pa - pw) / (D("287.042") * t) + pw / (D("461.524") * t)


@air
def air_viscosity(temperature_c):
    # U.S. Standard Atmosphere 1976, Sutherland: 1.458e-6 T^1.5/(T + 110.4)
    t = _kelvin(temperature_c)
    return D("1.458e-6") * mp.power(t, D("1.5")) / (t + D("110.4"))


# ---------------------------------------------------------------- price

@price
def price_from_markup(cost, markup_percent):
    # markup is counted on the cost: what is added is that share of the cost
    return mp.mpf(cost) + mp.mpf(cost) * markup_percent / 100


@price
def price_from_margin(cost, margin_percent):
    # margin is counted on the price: P - C = g P
    return 100 * mp.mpf(cost) / (100 - mp.mpf(margin_percent))


@price
def margin_from_markup(markup_percent):
    # of a price of 100 + m on a cost of 100, m is margin
    return 100 * mp.mpf(markup_percent) / (100 + mp.mpf(markup_percent))


@price
def markup_from_margin(margin_percent):
    # of a price of 100, g is margin and 100 - g the cost
    return 100 * mp.mpf(margin_percent) / (100 - mp.mpf(margin_percent))


@price
def vat_share_of_gross(vat_rate_percent):
    # VAT fraction: of a gross of 100 + r, r is tax
    return 1 / (100 / mp.mpf(vat_rate_percent) + 1) if vat_rate_percent else mp.mpf(0)


@price
def break_even_probability(cost, saving):
    # cost/loss ratio: p L = C
    return mp.mpf(cost) / saving
@air
def saturation_pressure_sonntag(temperature_c):
    # Sonntag 1990, over water, ln(e/hPa); the constant for Pa is 16.635794 + ln 100, rounded as published (21.2409642)
    t = _kelvin(temperature_c)
    return mp.exp(D("-6096.9385") / t + D("21.2409642") - D("2.711193e-2") * t + D("1.673952e-5") * t**2 + D("2.433502") * mp.log(t))


_IF97 = [D(n) for n in ("0", "0.11670521452767e4", "-0.72421316703206e6", "-0.17073846940092e2", "0.12020824702470e5", "-0.32325550322333e7",
                        "0.14915108613530e2", "-0.48232657361591e4", "0.40511340542057e6", "-0.23855557567849", "0.65017534844798e3")]


@air
def saturation_pressure_iapws(temperature_c):
    # IAPWS-IF97 region 4, eq. (30): the quadratic in beta for a given theta
    n, t = _IF97, _kelvin(temperature_c)
    theta = t + n[9] / (t - n[10])
    a, b, c = theta**2 + n[1] * theta + n[2], n[3] * theta**2 + n[4] * theta + n[5], n[6] * theta**2 + n[7] * theta + n[8]
    return 10**6 * (2 * c / (-b + mp.sqrt(b**2 - 4 * a * c))) ** 4


@air
def dew_point_iso13788(temperature_c, relative_humidity_percent):
    # ISO 13788 Annex E turned round
    pressure = saturation_pressure_iso13788(temperature_c) * relative_humidity_percent / 100
    g = mp.log(pressure / D("610.5"))
    a, b = (D("17.269"), D("237.3")) if g >= 0 else (D("21.875"), D("265.5"))
    return b * g / (a - g)


@air
def saturation_temperature(vapour_pressure_pa):
    return dew_point_of(mp.mpf(vapour_pressure_pa))


@air
def vapour_pressure_from_humidity_ratio(humidity_ratio, pressure_pa=101325):
    w = mp.mpf(humidity_ratio)
    return w * pressure_pa / (D("0.621945") + w)


@air
def relative_humidity_from_humidity_ratio(temperature_c, humidity_ratio, pressure_pa=101325):
    return 100 * vapour_pressure_from_humidity_ratio(humidity_ratio, pressure_pa) / saturation_pressure(temperature_c)


@air
def air_density_from_humidity_ratio(temperature_c, humidity_ratio, pressure_pa=101325):
    # ASHRAE Fundamentals ch. 1: v = 0.287042 (t + 273.15)(1 + 1.607858 W)/p, p in kPa; density (1 + W)/v
    v = D("0.287042") * _kelvin(temperature_c) * (1 + D("1.607858") * humidity_ratio) / (mp.mpf(pressure_pa) / 1000)
    return (1 + mp.mpf(humidity_ratio)) / v


@air
def vapour_concentration(temperature_c, relative_humidity_percent):
    # ideal gas, R = 461.524 J/(kg K); kilograms to grams
    return 1000 * vapour_pressure(temperature_c, relative_humidity_percent) / (D("461.524") * _kelvin(temperature_c))


@air
def moisture_removed(flow_l_per_s, temperature_c, relative_humidity_percent, outside_c, outside_humidity_percent):
    # IEA SHC design guide eq. (10.2): volume an hour times the difference of concentrations
    difference = vapour_concentration(temperature_c, relative_humidity_percent) - vapour_concentration(outside_c, outside_humidity_percent)
    return mp.mpf(flow_l_per_s) * 3600 / 1000 * difference


@air
def enthalpy(temperature_c, humidity_ratio):
    # ASHRAE Fundamentals ch. 1 eq. (30)
    t = mp.mpf(temperature_c)
    return D("1.006") * t + humidity_ratio * (2501 + D("1.86") * t)


@air
def temperature_from_enthalpy(enthalpy_kj_per_kg, humidity_ratio):
    return (mp.mpf(enthalpy_kj_per_kg) - 2501 * mp.mpf(humidity_ratio)) / (D("1.006") + D("1.86") * humidity_ratio)


def _humidity_from_wet_bulb(t, wet, pressure, iced):
    # ASHRAE Fundamentals ch. 1 eq. (33) over water, (35) over ice
    saturated = humidity_ratio(_hyland_wexler_ice(wet) if iced else _hyland_wexler_water(wet), pressure)
    if iced:
        return ((2830 - D("0.24") * wet) * saturated - D("1.006") * (t - wet)) / (2830 + D("1.86") * t - D("2.1") * wet)
    return ((2501 - D("2.326") * wet) * saturated - D("1.006") * (t - wet)) / (2501 + D("1.86") * t - D("4.186") * wet)


@air
def humidity_ratio_from_wet_bulb(temperature_c, wet_bulb_c, pressure_pa=101325):
    t, wet = mp.mpf(temperature_c), mp.mpf(wet_bulb_c)
    return _humidity_from_wet_bulb(t, wet, mp.mpf(pressure_pa), wet < 0)


@air
def relative_humidity_from_wet_bulb(temperature_c, wet_bulb_c, pressure_pa=101325):
    ratio = humidity_ratio_from_wet_bulb(temperature_c, wet_bulb_c, pressure_pa)
    return relative_humidity_from_humidity_ratio(temperature_c, ratio, pressure_pa)


@air
def wet_bulb(temperature_c, relative_humidity_percent, pressure_pa=101325):
    # the wet bulb that gives this humidity; over ice where a bulb over water at 0 C would ask for more
    t, p = mp.mpf(temperature_c), mp.mpf(pressure_pa)
    wanted = humidity_ratio(vapour_pressure(t, relative_humidity_percent), p)
    iced = _humidity_from_wet_bulb(t, mp.mpf(0), p, False) > wanted
    low, high = mp.mpf(-100), t
    for _ in range(40):  # it rises with the wet bulb
        middle = (low + high) / 2
        if _humidity_from_wet_bulb(t, middle, p, iced) < wanted:
            low = middle
        else:
            high = middle
    return mp.findroot(lambda wet: _humidity_from_wet_bulb(t, wet, p, iced) - wanted, (low, high))


@air
def standard_pressure(altitude_m):
    # U.S. Standard Atmosphere 1976: H = r0 z/(r0 + z), T = 288.15 - 0.0065 H, p = p0 (T/T0)^(g0 M/(R L))
    z, r0 = mp.mpf(altitude_m), mp.mpf(6356766)
    height = r0 * z / (r0 + z)
    exponent = D("9.80665") * D("28.9644") / (D("8314.32") * D("0.0065"))
    return 101325 * mp.power((D("288.15") - D("0.0065") * height) / D("288.15"), exponent)


@air
def altitude_from_pressure(pressure_pa):
    exponent = D("9.80665") * D("28.9644") / (D("8314.32") * D("0.0065"))
    height = D("288.15") / D("0.0065") * (1 - mp.power(mp.mpf(pressure_pa) / 101325, 1 / exponent))
    r0 = mp.mpf(6356766)
    return r0 * height / (r0 - height)


@air
def decay_concentration(initial_ppm, air_changes_per_h, time_h, outside_ppm=0):
    # V dc/dt = q (c_e - c)
    return outside_ppm + (mp.mpf(initial_ppm) - outside_ppm) * mp.exp(-mp.mpf(air_changes_per_h) * time_h)


@air
def room_concentration(source_l_per_s, room_volume_m3, air_changes_per_h, time_h, initial_ppm=0, outside_ppm=0):
    # V dc/dt = G + q (c_e - c), q = n V
    flow = mp.mpf(air_changes_per_h) * room_volume_m3 / 3600
    steady = outside_ppm + mp.mpf(source_l_per_s) / 1000 / flow * 10**6
    return steady + (initial_ppm - steady) * mp.exp(-mp.mpf(air_changes_per_h) * time_h)


@air
def time_to_concentration(limit_ppm, source_l_per_s, room_volume_m3, air_changes_per_h, initial_ppm=0, outside_ppm=0):
    flow = mp.mpf(air_changes_per_h) * room_volume_m3 / 3600
    steady = outside_ppm + mp.mpf(source_l_per_s) / 1000 / flow * 10**6
    return mp.log((steady - initial_ppm) / (steady - limit_ppm)) / air_changes_per_h


@air
def air_changes_from_decay(initial_ppm, final_ppm, time_h, outside_ppm=0):
    return mp.log((mp.mpf(initial_ppm) - outside_ppm) / (mp.mpf(final_ppm) - outside_ppm)) / time_h


@air
def stack_pressure(outside_density_kg_per_m3, density_kg_per_m3, rise_m):
    # ASHRAE Fundamentals 2021 ch. 21 eq. (14)
    return D("9.80665") * (mp.mpf(outside_density_kg_per_m3) - density_kg_per_m3) * rise_m


@air
def stack_pressure_from_temperatures(inside_c, outside_c, rise_m, pressure_pa=101325):
    def density(t):
        return mp.mpf(pressure_pa) / (D("287.042") * _kelvin(t))
    return stack_pressure(density(outside_c), density(inside_c), rise_m)


@air
def infiltration_flow(leakage_area_mm2, temperature_difference_k, wind_m_per_s, stack_coefficient, wind_coefficient):
    # ASHRAE Fundamentals 2021 ch. 16 eq. (48): Q in m3/s = A_L/1000 sqrt(C_s dT + C_w U^2), A_L in cm2
    area_cm2 = mp.mpf(leakage_area_mm2) / 100
    return 1000 * area_cm2 / 1000 * mp.sqrt(stack_coefficient * mp.mpf(temperature_difference_k) + wind_coefficient * mp.mpf(wind_m_per_s) ** 2)


@air
def velocity_from_velocity_pressure(velocity_pressure_pa, density_kg_per_m3):
    return mp.sqrt(2 * mp.mpf(velocity_pressure_pa) / density_kg_per_m3)


@air
def grille_flow(velocity_m_per_s, face_area_mm2, correction_factor=1):
    return mp.mpf(velocity_m_per_s) * face_area_mm2 / 10**6 * 1000 * correction_factor


@air
def flow_measurement_uncertainty(limit_percent, repeatability_percent, correction_percent=0):
    # GUM: rectangular half-width/sqrt 3, root of the sum of squares
    return mp.sqrt((mp.mpf(limit_percent) / mp.sqrt(3)) ** 2 + mp.mpf(repeatability_percent) ** 2 + (mp.mpf(correction_percent) / mp.sqrt(3)) ** 2)


@air
def orifice_discharge_coefficient(orifice_mm, diameter_mm, reynolds, taps):
    # ISO 5167-2:2003 eq. (4), Reader-Harris/Gallagher, with its addition below 71.12 mm
    d, pipe, re = mp.mpf(orifice_mm), mp.mpf(diameter_mm), mp.mpf(reynolds)
    b = d / pipe
    l1, l2 = {"corner": (mp.mpf(0), mp.mpf(0)), "flange": (D("25.4") / pipe, D("25.4") / pipe), "d_half": (mp.mpf(1), D("0.47"))}[taps]
    m2, a = 2 * l2 / (1 - b), (19000 * b / re) ** D("0.8")
    c = D("0.5961") + D("0.0261") * b**2 - D("0.216") * b**8 + D("0.000521") * (10**6 * b / re) ** D("0.7")
    c += (D("0.0188") + D("0.0063") * a) * b ** D("3.5") * (10**6 / re) ** D("0.3")
    c += (D("0.043") + D("0.080") * mp.exp(-10 * l1) - D("0.123") * mp.exp(-7 * l1)) * (1 - D("0.11") * a) * b**4 / (1 - b**4)
    c -= D("0.031") * (m2 - D("0.8") * m2 ** D("1.1")) * b ** D("1.3")
    if pipe < D("71.12"):
        c += D("0.011") * (D("0.75") - b) * (D("2.8") - pipe / D("25.4"))
    return c


@air
def orifice_expansibility(orifice_mm, diameter_mm, upstream_pa, downstream_pa, isentropic_exponent=D("1.4")):
    # ISO 5167-2:2003 eq. (5)
    b = mp.mpf(orifice_mm) / diameter_mm
    return 1 - (D("0.351") + D("0.256") * b**4 + D("0.93") * b**8) * (1 - (mp.mpf(downstream_pa) / upstream_pa) ** (1 / mp.mpf(isentropic_exponent)))


@air
def orifice_flow(orifice_mm, diameter_mm, pressure_difference_pa, density_kg_per_m3, discharge_coefficient, expansibility_factor=1):
    # ISO 5167-2:2003 eq. (1), mass flow over density
    b, d = mp.mpf(orifice_mm) / diameter_mm, mp.mpf(orifice_mm) / 1000
    mass = discharge_coefficient / mp.sqrt(1 - b**4) * expansibility_factor * mp.pi / 4 * d**2 * mp.sqrt(2 * mp.mpf(pressure_difference_pa) * density_kg_per_m3)
    return 1000 * mass / density_kg_per_m3


# Crane TP-410, chapter 2, tees and wyes; x is the flow of the branch over that of all, b2 the square of the diameters
_CRANE_F = {"30": D("1.74"), "45": D("1.41"), "60": mp.mpf(1), "90": mp.mpf(0)}


def _word(angle_deg):
    return angle_deg if isinstance(angle_deg, str) else mp.nstr(mp.mpf(angle_deg), 3).removesuffix(".0")


@air
def diverging_branch_coefficient(branch_flow_ratio, angle_deg, branch_diameter_ratio=1):
    # eq. 2-37 with its table of G; H = 1, J = 2
    x, b2 = mp.mpf(branch_flow_ratio), mp.mpf(branch_diameter_ratio) ** 2
    if b2 <= D("0.35"):
        g = D("1.1") - D("0.7") * x if x <= D("0.6") else D("0.85")
    else:
        g = 1 - D("0.6") * x if x <= D("0.4") else D("0.6")
    return g * (1 + (x / b2) ** 2 - 2 * (x / b2) * mp.cos(mp.radians(int(_word(angle_deg)))))


@air
def diverging_run_coefficient(branch_flow_ratio, branch_diameter_ratio=1):
    # eq. 2-38 with its table of M
    x, b2 = mp.mpf(branch_flow_ratio), mp.mpf(branch_diameter_ratio) ** 2
    m = D("0.4") if b2 <= D("0.4") else (2 if x <= D("0.5") else D("0.3")) * (2 * x - 1)
    return m * x**2


@air
def converging_branch_coefficient(branch_flow_ratio, angle_deg, branch_diameter_ratio=1):
    # eq. 2-35 with its table of C; D = 1, E = 2
    x, b2 = mp.mpf(branch_flow_ratio), mp.mpf(branch_diameter_ratio) ** 2
    c = mp.mpf(1) if b2 <= D("0.35") else (D("0.9") * (1 - x) if x <= D("0.4") else D("0.55"))
    return c * (1 + (x / b2) ** 2 - 2 * (1 - x) ** 2 - _CRANE_F[_word(angle_deg)] / b2 * x**2)


@air
def converging_run_coefficient(branch_flow_ratio, angle_deg, branch_diameter_ratio=1):
    # eq. 2-36 for 90 degrees; else eq. 2-35 with C = 1, D = 0, E = 1
    x, b2 = mp.mpf(branch_flow_ratio), mp.mpf(branch_diameter_ratio) ** 2
    if _word(angle_deg) == "90":
        return D("1.55") * x - x**2
    return 1 - (1 - x) ** 2 - _CRANE_F[_word(angle_deg)] / b2 * x**2


# One ordinary point of each function, for a look by eye and for a caller that wants a smoke test
# ---------------------------------------------------------------- setting_out

@setting_out
def spindle_speed(diameter_mm, cutting_speed_m_per_min):
    # n = 1000 v/(pi d), v in m/min, d in mm
    return 1000 * mp.mpf(cutting_speed_m_per_min) / (mp.pi * diameter_mm)


@setting_out
def peripheral_speed(diameter_mm, spindle_speed_per_min):
    # v = pi d n/1000
    return mp.pi * mp.mpf(diameter_mm) * spindle_speed_per_min / 1000


@setting_out
def bend_saving(radius_mm, bends_count=1):
    # two tangents less a quarter of a circle
    return bends_count * (2 - mp.pi / 2) * mp.mpf(radius_mm)


@setting_out
def cord_length(legs_mm, radius_mm=0, bends_count=0, allowance_mm=0):
    return mp.mpf(legs_mm) - bends_count * (2 - mp.pi / 2) * mp.mpf(radius_mm) + allowance_mm


@setting_out
def parabola_sag(length_mm, span_mm):
    # L = S (1 + 8 h^2/(3 S^2)) solved for h
    return mp.sqrt(3 * mp.mpf(span_mm) * (mp.mpf(length_mm) - span_mm) / 8)


# DIN VDE 0298 part 3 and the On-Site Guide: steps of the outer diameter, factors up to each step and above
BENDS = {
    "fixed_unarmoured": ((10, 25), (3, 4, 6)), "shaped_once": ((10, 25), (1, 2, 3)), "flexible_fixed": ((8, 12, 20), (3, 3, 4, 4)), "flexible_free": ((8, 12, 20), (3, 4, 5, 5)),
    "flexible_entry": ((8, 12, 20), (3, 4, 5, 5)), "flexible_guided": ((8, 12, 20), (5, 5, 5, 6)), "mineral_insulated": ((), (5,)),
}


@setting_out
def bend_radius(cable, diameter_mm):
    steps, factors = BENDS[cable]
    return factors[sum(diameter_mm > step for step in steps)] * mp.mpf(diameter_mm)


@setting_out
def fixing_pull(load_n, projection_mm, lever_mm, top_count):
    # moments about the lower edge: W e = n T h
    return mp.mpf(load_n) * projection_mm / lever_mm / top_count


@setting_out
def fixing_shear(load_n, fixings_count):
    return mp.mpf(load_n) / fixings_count


@setting_out
def fixing_interaction(pull_n, allowable_pull_n, shear_n, allowable_shear_n):
    return mp.mpf(pull_n) / allowable_pull_n + mp.mpf(shear_n) / allowable_shear_n


@setting_out
def allowable_from_tests(mean_ultimate_n, factor=4):
    return mp.mpf(mean_ultimate_n) / factor


@setting_out
def greatest_proof_load(allowable_n):
    # AEFAC TN05: not above 1.5 times the allowable working load
    return mp.mpf(allowable_n) * 3 / 2


# ---------------------------------------------------------------- lighting

@lighting
def room_index(length_m, width_m, mounting_height_m):
    # K = L W/(Hm (L + W)) = 1/(Hm (1/L + 1/W))
    return 1 / (mounting_height_m * (1 / mp.mpf(length_m) + 1 / mp.mpf(width_m)))


@lighting
def lumen_method_illuminance(lamps_count, flux_lm, utilisation_factor, maintenance_factor, area_m2):
    return mp.mpf(lamps_count) * flux_lm * utilisation_factor * maintenance_factor / area_m2


@lighting
def lumen_method_lamps(illuminance_lx, area_m2, flux_lm, utilisation_factor, maintenance_factor):
    return mp.mpf(illuminance_lx) * area_m2 / flux_lm / utilisation_factor / maintenance_factor


@lighting
def maintenance_factor(lamp_lumen_factor, lamp_survival_factor, luminaire_factor, room_surface_factor):
    return mp.mpf(lamp_lumen_factor) * lamp_survival_factor * luminaire_factor * room_surface_factor


@lighting
def point_illuminance(intensity_cd, height_m, offset_m):
    # I cos(g)/d^2 with cos(g) = h/d
    d = mp.hypot(mp.mpf(height_m), offset_m)
    return mp.mpf(intensity_cd) * height_m / d**3


@lighting
def point_illuminance_vertical(intensity_cd, height_m, offset_m, azimuth_deg=0):
    d = mp.hypot(mp.mpf(height_m), offset_m)
    return mp.mpf(intensity_cd) * offset_m / d**3 * mp.cos(mp.pi * mp.mpf(azimuth_deg) / 180)


@lighting
def luminous_intensity(illuminance_lx, height_m, offset_m=0):
    d = mp.hypot(mp.mpf(height_m), offset_m)
    return mp.mpf(illuminance_lx) * d**3 / height_m


@lighting
def luminous_intensity_from_flux(flux_lm, beam_angle_deg):
    # I = F/(2 pi (1 - cos(b/2))), written with the half angle so that 50 digits are enough for a narrow beam
    return mp.mpf(flux_lm) / (4 * mp.pi * mp.sin(mp.pi * mp.mpf(beam_angle_deg) / 720) ** 2)


@lighting
def downlight_spacing(mounting_height_m, spacing_ratio):
    return mp.mpf(mounting_height_m) * spacing_ratio


@lighting
def line_illuminance(intensity_cd_per_m, distance_m, left_m, right_m):
    # integral of I d^2/(d^2 + x^2)^2 dx = I/(2 d) (atan(x/d) + (x/d)/(1 + (x/d)^2))
    total = mp.mpf(0)
    for part in (left_m, right_m):
        z = mp.mpf(part) / distance_m
        total += mp.atan(z) + z / (1 + z * z)
    return mp.mpf(intensity_cd_per_m) / (2 * mp.mpf(distance_m)) * total


POINTS = {
    "electrical.voltage_drop": dict(drop_mv_per_a_m=18, current_a=32, length_m=40),
    "electrical.voltage_drop_impedance": dict(resistance_mohm_per_m=9, reactance_mohm_per_m="0.08", current_a=16, length_m=25, power_factor="0.8", b=2),
    "electrical.ring_voltage_drop": dict(resistance_mohm_per_m=18, ring_length_m=80, distance_m=16, current_a=20, spur_length_m=4),
    "electrical.operating_temperature_factor": dict(design_current_a=26, tabulated_capacity_a=42, ambient_factor=1, grouping_factor=1, conductor_max_c=70),
    "electrical.design_current": dict(power_w=3000, voltage_v=230, power_factor=1),
    "electrical.design_current_three_phase": dict(power_w=16000, voltage_v=400, power_factor=1),
    "electrical.resistance_at_temperature": dict(resistance_20_mohm_per_m="7.41", temperature_c=70),
    "electrical.loop_resistance": dict(line_mohm_per_m="7.41", cpc_mohm_per_m="12.1", length_m=22),
    "electrical.length_from_resistance": dict(resistance_ohm="0.593", resistance_mohm_per_m="7.41"),
    "electrical.cross_connected_resistance": dict(first_ohm="0.5", second_ohm="0.835", position_ratio="0.25"),
    "electrical.adiabatic_k": dict(material="copper", initial_c=70, final_c=160),
    "electrical.adiabatic_k_from_constants": dict(heat_capacity_j_per_k_mm3="3.8e-3", beta_k=202, resistivity_20_ohm_mm="138e-6", initial_c=60, final_c=200),
    "electrical.adiabatic_area": dict(current_a=90, time_s="0.4", k=115),
    "electrical.adiabatic_area_from_let_through": dict(let_through_a2s=45000, k=115),
    "electrical.adiabatic_time": dict(current_a=460, area_mm2="1.5", k=115),
    "electrical.adiabatic_final_temperature": dict(let_through_a2s=100000, area_mm2="2.5", material="copper", initial_c=70),
    "electrical.adiabatic_withstand": dict(area_mm2="1.5", k=143),
    "electrical.fault_energy": dict(current_a=247, time_s="0.1"),
    "electrical.earth_fault_loop_impedance": dict(external_ohm="0.35", r1_plus_r2_ohm="0.62"),
    "electrical.max_earth_fault_loop_impedance": dict(voltage_v=230, minimum_voltage_factor="0.95", operating_current_a=160),
    "electrical.warm_loop_impedance": dict(cold_loop_impedance_ohm="0.93", external_ohm="0.28"),
    "electrical.prospective_fault_current": dict(voltage_v=230, impedance_ohm="0.35"),
    "electrical.conductor_resistance_20": dict(metal="copper", conductor_class="2", area_mm2="2.5"),
    "electrical.current_capacity": dict(coefficient_a=15, exponent_m="0.625", coefficient_b=0, exponent_n=1, area_mm2="2.5"),
    "electrical.installed_capacity": dict(installation="pvc_2_c", area_mm2="2.5"),
    "electrical.flat_twin_capacity": dict(method="C", area_mm2="2.5"),
    "electrical.flat_twin_voltage_drop": dict(area_mm2="2.5"),
    "electrical.smallest_size": dict(method="C", rating_a=32, design_current_a=30, length_m=20, correction_factor=1, drop_limit_v="11.5", external_ohm="0.35", loop_limit_ohm="1.366", let_through_a2s=10000),
    "electrical.ambient_factor": dict(conductor_max_c=70, ambient_c=40),
    "electrical.grouping_factor": dict(arrangement="bunched", circuits="3"),
    "electrical.thermal_insulation_factor": dict(length_in_insulation_mm="100", edition="16th"),
    "electrical.required_capacity": dict(rating_a=32, ambient_factor="0.94", grouping_factor="0.8"),
    "electrical.short_overload_current": dict(capacity_a=27, preload_a=10, time_s=600, time_constant_s=300),
    "electrical.breaker_operating_current": dict(type="B", rating_a=32),
    "electrical.breaker_holding_current": dict(type="C", rating_a=16),
    "electrical.fuse_operating_current": dict(fuse="bs3036_30", disconnection_time_s="0.4"),
    "electrical.conventional_operating_current": dict(device="breaker", rating_a=32),
    "electrical.cold_loop_limit": dict(limit_ohm="2.185"),
    "electrical.earth_resistance_limit": dict(residual_current_ma=30),
    "electrical.touch_voltage": dict(voltage_v=230, external_ohm="0.35", line_ohm="0.1956", protective_ohm="0.3194"),
    "electrical.bonding_resistance_limit": dict(operating_current_a=160),
    "electrical.extraneous_part_resistance": dict(voltage_v=230, body_current_ma=30),
    "electrical.protective_conductor_area": dict(line_area_mm2=25),
    "electrical.joint_resistance_under_load": dict(drop_v="1.2", current_a=10),
    "electrical.joint_heating": dict(resistance_ohm="0.12", current_a=10),
    "electrical.residual_share": dict(leakage_ma="7.5", residual_current_ma=30),
    "electrical.cooker_demand": dict(connected_a=50, socket="with_socket"),
    "electrical.heating_demand": dict(connected_a=30),
    "electrical.lighting_demand": dict(connected_a=6),
    "electrical.circuits_demand": dict(largest_a=32, others_a=52),
    "electrical.murray_loop_distance": dict(sound_arm_ohm=2, faulty_arm_ohm=1, length_m=300),
    "electrical.murray_loop_distance_unequal": dict(sound_arm_ohm=800, faulty_arm_ohm=200, length_m=20, faulty_mohm_per_m="12.1", return_mohm_per_m="7.41"),
    "electrical.varley_loop_distance": dict(earth_reading_ohm="0.4", loop_reading_ohm=1, length_m=200, lead_ohm="0.02"),
    "electrical.varley_loop_resistance": dict(sound_arm_ohm=10, faulty_arm_ohm=20, added_ohm=14, loop_ohm=48),
    "electrical.capacitance_break_distance": dict(near_nf=1, far_nf=3, length_m=40),
    "electrical.capacitance_break_distance_sound_core": dict(broken_nf=1, sound_nf=4, length_m=40),
    "electrical.resistance_short_distance": dict(loop_reading_ohm="0.5", loop_mohm_per_m="24.2", lead_ohm="0.1"),
    "electrical.resistance_short_distance_both_ends": dict(near_reading_ohm="0.5", far_reading_ohm="0.6", length_m=20, loop_mohm_per_m="24.2"),
    "electrical.reflection_distance": dict(velocity_factor="0.7", round_trip_ns=80),
    "electrical.velocity_factor_from_length": dict(length_m=20, round_trip_ns=202),
    "electrical.velocity_factor_from_permittivity": dict(permittivity="2.3"),
    "electrical.insulation_of_two": dict(first_mohm=2, second_mohm=6),
    "electrical.unknown_branch_insulation": dict(total_mohm="0.9", rest_mohm=20),
    "electrical.insulation_of_length": dict(resistance_mohm=2, length_m=40, wanted_length_m=100),
    "electrical.insulation_at_temperature": dict(resistance_mohm=40, temperature_c=30, wanted_c=20),
    "electrical.insulation_test_voltage": dict(circuit_kind="up_to_500_v"),
    "electrical.tabulated_voltage_drop": dict(cable="xlpe_3", area_mm2="6"),
    "electrical.flex_capacity": dict(area_mm2="4", phases="three"),
    "electrical.flex_voltage_drop": dict(area_mm2="0.75"),
    "electrical.awg_diameter": dict(gauge=14),
    "electrical.awg_area": dict(gauge=-3),
    "electrical.awg_gauge": dict(diameter_mm="1.628"),
    "electrical.conductor_resistivity": dict(material="copper", temperature_c=75),
    "electrical.resistance_from_resistivity": dict(resistivity_ohm_mm2_per_m="0.020968", area_mm2="2.081"),
    "electrical.spread_voltage_drop": dict(resistance_mohm_per_m=29, spread_length_m=24, current_a=4, unloaded_length_m=10),
    "electrical.ring_spread_voltage_drop": dict(resistance_mohm_per_m=18, ring_length_m=80, current_a=32),
    "electrical.ring_assumed_current": dict(rating_a=32),
    "electrical.ring_leg_current": dict(ring_length_m=80, distance_m=16, current_a=20),
    "electrical.longest_run_by_drop": dict(drop_limit_v="6.9", drop_mv_per_a_m=29, current_a=6),
    "electrical.longest_ring_by_drop": dict(drop_limit_v="11.5", drop_mv_per_a_m=18, current_a=26),
    "electrical.longest_run_by_loop": dict(loop_limit_ohm="1.3656", external_ohm="0.35", r1_plus_r2_mohm_per_m="19.51"),
    "electrical.longest_ring_by_loop": dict(loop_limit_ohm="1.3656", external_ohm="0.35", r1_plus_r2_mohm_per_m="19.51"),
    "electrical.polarisation_index": dict(after_10_min_mohm=850, after_1_min_mohm=400),
    "sensing.ntc_resistance": dict(temperature_c=5, reference_ohm=10000, reference_c=25, beta_k=3950),
    "sensing.ntc_temperature": dict(resistance_ohm="12535.3", reference_ohm=10000, reference_c=25, beta_k=3950),
    "sensing.beta_from_two_points": dict(temperature_1_c=25, resistance_1_ohm=10000, temperature_2_c=85, resistance_2_ohm=1072),
    "sensing.steinhart_hart_temperature": dict(resistance_ohm=20000, a="1.1351066e-3", b="2.3293284e-4", c="9.4096431e-8"),
    "sensing.steinhart_hart_resistance": dict(temperature_c=30, a="1.1351066e-3", b="2.3293284e-4", c="9.4096431e-8"),
    "sensing.fit_steinhart_hart": dict(points=[(0, 32554), (25, 10000), (50, 3605)]),
    "sensing.rtd_resistance": dict(temperature_c=-200, r0_ohm=100),
    "sensing.rtd_temperature": dict(resistance_ohm="18.52", r0_ohm=100),
    "sensing.rtd_tolerance": dict(tolerance_class="B", temperature_c=600),
    "sensing.silicon_ptc_resistance": dict(temperature_c=0, reference_ohm=1000),
    "sensing.silicon_ptc_temperature": dict(resistance_ohm=815, reference_ohm=1000),
    "sensing.metal_resistance": dict(metal="nickel", temperature_c=180, r0_ohm=100),
    "sensing.metal_temperature": dict(metal="copper", resistance_ohm="121.4", r0_ohm=100),
    "sensing.alloy_resistance": dict(alloy="constantan", temperature_c=60, resistance_20_ohm=100),
    "sensing.alloy_resistance_20": dict(alloy="copper", temperature_c=60, resistance_ohm="116.164"),
    "sensing.lead_resistance_error_k": dict(lead_ohm=10, slope_ohm_per_k="0.385"),
    "sensing.rtd_lead_error_k": dict(temperature_c=25, lead_ohm=1, r0_ohm=100),
    "sensing.ntc_lead_error_k": dict(temperature_c=25, lead_ohm=500, reference_ohm=10000, reference_c=25, beta_k=3950),
    "sensing.ntc_shunt_error_k": dict(temperature_c=25, shunt_ohm=100000, reference_ohm=10000, reference_c=25, beta_k=3950),
    "sensing.shunted_resistance": dict(resistance_ohm=10000, shunt_ohm=100000),
    "sensing.shunt_resistance": dict(resistance_ohm=10000, reading_ohm=9000),
    "sensing.self_heating_k": dict(power_mw=1, dissipation_mw_per_k=2),
    "sensing.divider_sensor_power": dict(supply_v=5, series_ohm=10000, resistance_ohm=10000),
    "sensing.ntc_sensitivity": dict(temperature_c=25, beta_k=3950),
    "sensing.ntc_tolerance": dict(temperature_c=5, beta_k=3950, resistance_tolerance_percent=5, beta_tolerance_percent=1),
    "sensing.ntc_tolerance_standard": dict(temperature_c=5, beta_k=3950, resistance_tolerance_percent=5, beta_tolerance_percent=1),
    "sensing.rtd_tolerance_ohm": dict(tolerance_class="B", temperature_c=500, r0_ohm=100),
    "sensing.switching_ptc_coefficient": dict(temperature_1_c=80, resistance_1_ohm=1000, temperature_2_c=90, resistance_2_ohm=10000),
    "heating.element_resistance": dict(power_w=450, voltage_v=230),
    "heating.element_power": dict(resistance_ohm="117.556", voltage_v=240),
    "heating.element_current": dict(power_w=1000, voltage_v=240),
    "heating.power_at_voltage": dict(rated_power_w=450, rated_voltage_v=230, voltage_v=240),
    "heating.parallel_element_resistance": dict(power_w=150, voltage_v=230, mats_count=3),
    "heating.power_density": dict(power_w=10, area_m2="0.0667"),
    "heating.floor_heat_flux": dict(surface_c=29, room_c=20),
    "heating.floor_surface_temperature": dict(flux_w_per_m2=100, room_c=20),
    "heating.heated_area": dict(length_m=3, width_m="2.4", fixed_area_m2="1.5"),
    "heating.cable_power_density": dict(power_w_per_m=10, spacing_mm="66.7"),
    "heating.cable_spacing": dict(length_m=45, area_m2=3),
    "heating.shorted_fraction": dict(resistance_ohm="105.8", rated_ohm="117.6"),
    "heating.shorted_power": dict(power_w=529, fraction="0.1"),
    "heating.shorted_loading": dict(fraction="0.25"),
    "heating.missing_parallel_mats": dict(resistance_ohm=176, power_w=150, voltage_v=230, mats_count=3),
    "heating.screen_fault_position": dict(loop_ohm="117.6", first_ohm=40, second_ohm="77.6"),
    "heating.screen_fault_resistance": dict(loop_ohm=117, first_ohm=400, second_ohm=430),
    "heating.highest_power_input": dict(appliance="heating", rated_power_w=450),
    "heating.least_power_input": dict(rated_power_w=450),
    "heating.floor_limit_factor": dict(highest_surface_c=35, room_c=20),
    "heating.surface_heat_flux": dict(surface="wall", surface_c=30, room_c=20),
    "heating.upward_resistance": dict(covering_m2k_per_w="0.01", over_mm=10, conductivity_w_per_m_k="1.4"),
    "heating.downward_flux": dict(flux_w_per_m2=100, up_m2k_per_w="0.112", down_m2k_per_w="0.75", room_c=20, below_c=20),
    "heating.upward_flux": dict(power_w_per_m2=150, up_m2k_per_w="0.112", down_m2k_per_w="0.75", room_c=20, below_c=10),
    "heating.material_conductivity": dict(material="plywood"),
    "heating.material_density": dict(material="plywood"),
    "heating.material_heat_capacity": dict(material="ceramic_tile"),
    "heating.thermal_resistance": dict(thickness_mm=10, conductivity_w_per_m_k="0.034"),
    "heating.surface_resistance": dict(convection_w_per_m2_k=5, radiation_w_per_m2_k="5.13"),
    "heating.u_value": dict(layers_m2k_per_w=2),
    "heating.conduction_heat_flow": dict(conductivity_w_per_m_k="0.9", area_m2=15, thickness_mm=300, difference_k=14),
    "heating.thermal_effusivity": dict(conductivity_w_per_m_k="1.3", density_kg_per_m3=2300, heat_capacity_j_per_kg_k=840),
    "heating.contact_temperature": dict(first_effusivity=1120, first_c=33, second_effusivity=14000, second_c=60),
    "heating.radiation_coefficient": dict(emissivity="0.9", mean_c="26.85"),
    "heating.radiation_heat_flow": dict(emissivity="0.95", area_m2="1.4", surface_c=30, surroundings_c=10),
    "heating.plate_radiation": dict(first_emissivity="0.2", second_emissivity="0.2", area_m2="0.25", first_c=100, second_c=40),
    "heating.rayleigh_number": dict(difference_k=209, length_mm=710, expansion_per_k="0.0025", viscosity_m2_per_s="2.64e-5", diffusivity_m2_per_s="3.83e-5"),
    "heating.vertical_plate_nusselt": dict(rayleigh=1814700000, prandtl="0.69"),
    "heating.vertical_plate_nusselt_laminar": dict(rayleigh=100000000, prandtl="0.71"),
    "heating.horizontal_cylinder_nusselt": dict(rayleigh=1869000, prandtl="0.7241"),
    "heating.plate_below_nusselt": dict(rayleigh=11860000),
    "heating.convection_coefficient": dict(nusselt="113.3", conductivity_w_per_m_k="0.02808", length_mm=600),
    "heating.vertical_plate_coefficient": dict(surface_c=90, air_c=30, height_mm=600),
    "heating.air_heat_factor": dict(density_kg_per_m3="1.2", heat_capacity_j_per_kg_k=1005),
    "heating.ventilation_coefficient": dict(volume_m3="22.77", air_changes_per_h=2),
    "heating.element_heat_loss": dict(u_value="0.35", area_m2=9, inside_c=24, outside_c=-2),
    "heating.room_heat_loss": dict(fabric_w_per_k="5.52", volume_m3=12, air_changes_per_h=2, inside_c=24, outside_c=-2),
    "heating.steady_temperature": dict(power_w=450, loss_w_per_k=15, outside_c=-2),
    "heating.warm_up_time": dict(capacity_j_per_k=1000000, power_w=800, loss_w_per_k=15, start_c=15, target_c=22, surroundings_c=0),
    "heating.running_cost": dict(power_w=450, time_h=4, price_per_kwh="0.28"),
    "heating.mean_excess": dict(flow_c=75, return_c=65, room_c=20),
    "heating.log_mean_excess": dict(flow_c=55, return_c=45, room_c=20),
    "heating.radiator_output": dict(rated_output_w=1, excess_k=30),
    "heating.rail_surface_temperature": dict(power_w=150, rated_output_w=300, room_c=20),
    "heating.burn_threshold": dict(surface="bare_metal", contact="minute"),
    "heating.mirror_clear_power": dict(air_c=24, relative_humidity_percent=80, glass_c=18, area_m2=1),
    "heating.mirror_clear_time": dict(power_w=60, area_m2="0.25", thickness_mm=4, coefficient_w_per_m2_k=10, glass_c=18, target_c=22),
    "heating.pad_temperature_rise": dict(power_w=60, area_m2="0.25", thickness_mm=4, coefficient_w_per_m2_k=10, time_s=600),
    "air.airflow_from_air_changes": dict(room_volume_m3="36.45", air_changes_per_h=8),
    "air.air_changes_from_airflow": dict(flow_l_per_s=31, room_volume_m3=185),
    "air.flow_from_velocity": dict(velocity_m_per_s=2, area_mm2=7854),
    "air.door_undercut_area": dict(door_width_mm=760, gap_mm=10),
    "air.make_up_air_velocity": dict(flow_l_per_s=15, area_mm2=7600),
    "air.air_power": dict(flow_l_per_s=15, pressure_pa=30),
    "air.specific_fan_power": dict(power_w=9, flow_l_per_s=15),
    "price.price_from_markup": dict(cost=5, markup_percent=30),
    "price.price_from_margin": dict(cost=5, margin_percent=30),
    "price.margin_from_markup": dict(markup_percent=30),
    "price.markup_from_margin": dict(margin_percent=35),
    "price.vat_share_of_gross": dict(vat_rate_percent="17.5"),
    "price.break_even_probability": dict(cost=220, saving=900),
    "air.fan_law_flow": dict(flow_l_per_s=15, speed_ratio="0.5", diameter_ratio="1.2"),
    "air.fan_law_pressure": dict(pressure_pa=40, speed_ratio="0.5", diameter_ratio="1.2", density_ratio="0.875"),
    "air.fan_law_power": dict(power_w=9, speed_ratio="0.5", diameter_ratio="1.2", density_ratio="0.875"),
    "air.saturation_pressure_ice": dict(temperature_c=-20),
    "air.reynolds_number": dict(velocity_m_per_s=2, diameter_mm=100, density_kg_per_m3="1.2", viscosity_pa_s="1.8e-5"),
    "air.friction_factor": dict(reynolds=3000, relative_roughness="0.001"),
    "air.friction_factor_colebrook": dict(reynolds=100000, relative_roughness="1e-4"),
    "air.friction_factor_churchill": dict(reynolds=1000, relative_roughness="1e-4"),
    "air.friction_factor_swamee_jain": dict(reynolds=100000, relative_roughness="1e-4"),
    "air.friction_factor_haaland": dict(reynolds=100000, relative_roughness="1e-4"),
    "air.hydraulic_diameter": dict(width_mm=204, height_mm=60),
    "air.equivalent_diameter": dict(width_mm=204, height_mm=60),
    "air.duct_velocity": dict(flow_l_per_s=470, diameter_mm=250),
    "air.duct_velocity_rectangular": dict(flow_l_per_s=15, width_mm=204, height_mm=60),
    "air.velocity_pressure": dict(velocity_m_per_s=3, density_kg_per_m3="1.21"),
    "air.fitting_pressure_loss": dict(loss_coefficient="0.5", velocity_m_per_s=3, density_kg_per_m3="1.21"),
    "air.duct_pressure_loss": dict(flow_l_per_s=15, diameter_mm=100, length_m=1, roughness_mm="0.09", density_kg_per_m3="1.2", viscosity_pa_s="1.8e-5"),
    "air.duct_pressure_loss_rectangular": dict(flow_l_per_s=15, width_mm=204, height_mm=60, length_m=1, roughness_mm="0.09", density_kg_per_m3="1.2", viscosity_pa_s="1.8e-5"),
    "air.flexible_duct_multiplier": dict(compression_percent=15, diameter_mm=250),
    "air.saturation_pressure": dict(temperature_c=-20),
    "air.saturation_pressure_magnus": dict(temperature_c=20),
    "air.saturation_pressure_iso13788": dict(temperature_c=-5),
    "air.vapour_pressure": dict(temperature_c=21, relative_humidity_percent=40),
    "air.surface_temperature": dict(outside_c=0, room_c=20, temperature_factor="0.75"),
    "air.temperature_factor": dict(surface_c="17.5", room_c=22, outside_c=5),
    "air.surface_relative_humidity": dict(surface_c="12.6", room_c=20, relative_humidity_percent=50),
    "air.critical_surface_temperature": dict(room_c=20, relative_humidity_percent=50, surface_humidity_percent=80),
    "air.dew_point": dict(temperature_c=25, relative_humidity_percent=80),
    "air.dew_point_magnus": dict(temperature_c=22, relative_humidity_percent=70),
    "air.relative_humidity": dict(temperature_c=20, dew_point_c=15),
    "air.humidity_ratio": dict(vapour_pressure_pa="3169.7", pressure_pa=95461),
    "air.air_density": dict(temperature_c=20, relative_humidity_percent=50, pressure_pa=101325),
    "air.air_viscosity": dict(temperature_c=20),
    "setting_out.spindle_speed": dict(diameter_mm=12, cutting_speed_m_per_min=25),
    "setting_out.peripheral_speed": dict(diameter_mm=35, spindle_speed_per_min=1500),
    "setting_out.bend_saving": dict(radius_mm=30, bends_count=2),
    "setting_out.cord_length": dict(legs_mm=1250, radius_mm=30, bends_count=2, allowance_mm=100),
    "setting_out.parabola_sag": dict(length_mm=1010, span_mm=1000),
    "setting_out.bend_radius": dict(cable="flexible_free", diameter_mm=9),
    "setting_out.fixing_pull": dict(load_n=120, projection_mm=100, lever_mm=60, top_count=2),
    "setting_out.fixing_shear": dict(load_n=120, fixings_count=4),
    "setting_out.fixing_interaction": dict(pull_n=100, allowable_pull_n=500, shear_n=30, allowable_shear_n=800),
    "setting_out.allowable_from_tests": dict(mean_ultimate_n=2040, factor=4),
    "setting_out.greatest_proof_load": dict(allowable_n=510),
    "lighting.room_index": dict(length_m=8, width_m=6, mounting_height_m="2.2"),
    "lighting.lumen_method_illuminance": dict(lamps_count=4, flux_lm=500, utilisation_factor="0.45", maintenance_factor="0.8", area_m2="4.32"),
    "lighting.lumen_method_lamps": dict(illuminance_lx=150, area_m2="4.32", flux_lm=500, utilisation_factor="0.45", maintenance_factor="0.8"),
    "lighting.maintenance_factor": dict(lamp_lumen_factor="0.9", lamp_survival_factor="0.95", luminaire_factor="0.85", room_surface_factor="0.9"),
    "lighting.point_illuminance": dict(intensity_cd="5.4", height_m="0.6", offset_m="0.8"),
    "lighting.point_illuminance_vertical": dict(intensity_cd="5.4", height_m="0.6", offset_m="0.8", azimuth_deg=30),
    "lighting.luminous_intensity": dict(illuminance_lx=15, height_m="0.6", offset_m=0),
    "lighting.luminous_intensity_from_flux": dict(flux_lm=500, beam_angle_deg=60),
    "lighting.downlight_spacing": dict(mounting_height_m="5.5", spacing_ratio="1.5"),
    "lighting.line_illuminance": dict(intensity_cd_per_m=100, distance_m="0.5", left_m="0.3", right_m="1.2"),
    "air.saturation_pressure_sonntag": dict(temperature_c=20),
    "air.saturation_pressure_iapws": dict(temperature_c="26.85"),
    "air.dew_point_iso13788": dict(temperature_c=20, relative_humidity_percent=60),
    "air.saturation_temperature": dict(vapour_pressure_pa=1400),
    "air.vapour_pressure_from_humidity_ratio": dict(humidity_ratio="0.0064"),
    "air.relative_humidity_from_humidity_ratio": dict(temperature_c=40, humidity_ratio="0.0064"),
    "air.air_density_from_humidity_ratio": dict(temperature_c=30, humidity_ratio="0.02", pressure_pa=95461),
    "air.vapour_concentration": dict(temperature_c=20, relative_humidity_percent=60),
    "air.moisture_removed": dict(flow_l_per_s=15, temperature_c=20, relative_humidity_percent=60, outside_c=0, outside_humidity_percent=70),
    "air.enthalpy": dict(temperature_c=40, humidity_ratio="0.0064"),
    "air.temperature_from_enthalpy": dict(enthalpy_kj_per_kg="56.7", humidity_ratio="0.0064"),
    "air.humidity_ratio_from_wet_bulb": dict(temperature_c=30, wet_bulb_c=25, pressure_pa=95461),
    "air.relative_humidity_from_wet_bulb": dict(temperature_c=40, wet_bulb_c=20),
    "air.wet_bulb": dict(temperature_c=20, relative_humidity_percent=50),
    "air.standard_pressure": dict(altitude_m=500),
    "air.altitude_from_pressure": dict(pressure_pa=95461),
    "air.decay_concentration": dict(initial_ppm=1000, air_changes_per_h=5, time_h="0.25", outside_ppm=400),
    "air.room_concentration": dict(source_l_per_s="2.4", room_volume_m3=5400, air_changes_per_h=1, time_h="0.333333"),
    "air.time_to_concentration": dict(limit_ppm=120, source_l_per_s="0.0012", room_volume_m3=40, air_changes_per_h="0.27"),
    "air.air_changes_from_decay": dict(initial_ppm=2000, final_ppm=900, time_h="0.5", outside_ppm=420),
    "air.stack_pressure": dict(outside_density_kg_per_m3="1.29", density_kg_per_m3="1.2", rise_m=5),
    "air.stack_pressure_from_temperatures": dict(inside_c=20, outside_c=0, rise_m=5),
    "air.infiltration_flow": dict(leakage_area_mm2=50000, temperature_difference_k=39, wind_m_per_s="6.7", stack_coefficient="0.00029", wind_coefficient="0.000231"),
    "air.velocity_from_velocity_pressure": dict(velocity_pressure_pa="2.5", density_kg_per_m3="1.2"),
    "air.grille_flow": dict(velocity_m_per_s="1.2", face_area_mm2=22500, correction_factor="0.8"),
    "air.flow_measurement_uncertainty": dict(limit_percent=5, repeatability_percent=2),
    "air.orifice_discharge_coefficient": dict(orifice_mm="22.2", diameter_mm="73.91", reynolds=115328, taps="corner"),
    "air.orifice_expansibility": dict(orifice_mm="22.2", diameter_mm="73.9", upstream_pa=100000, downstream_pa=99000),
    "air.orifice_flow": dict(orifice_mm=60, diameter_mm=100, pressure_difference_pa=50, density_kg_per_m3="1.2", discharge_coefficient="0.61"),
    "air.diverging_branch_coefficient": dict(branch_flow_ratio="0.385", angle_deg="45"),
    "air.diverging_run_coefficient": dict(branch_flow_ratio="0.385"),
    "air.converging_branch_coefficient": dict(branch_flow_ratio="0.25", angle_deg="90"),
    "air.converging_run_coefficient": dict(branch_flow_ratio="0.25", angle_deg="60"),
}
CHOICES = {"material", "tolerance_class", "metal", "conductor_class", "installation", "method", "arrangement", "circuits", "length_in_insulation_mm", "edition", "type", "fuse", "disconnection_time_s", "device", "socket", "cable", "phases", "circuit_kind", "alloy", "appliance", "surface", "contact", "taps", "angle_deg"}


def as_arguments(inputs):
    """Ledger inputs (numbers or decimal strings) as ORACLE wants them."""
    def one(name, value):
        if name in CHOICES:
            return value
        if name == "points":
            return [(mp.mpf(t), mp.mpf(r)) for t, r in value]
        return mp.mpf(value)
    return {name: one(name, value) for name, value in inputs.items()}


if __name__ == "__main__":
    for function, evaluate in ORACLE.items():
        result = evaluate(**as_arguments(POINTS[function]))
        shown = result if isinstance(result, tuple) else (result,)
        print(f"{function:44s}", *(mp.nstr(value, 15) for value in shown))
