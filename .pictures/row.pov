#include "common.inc"
#include "crescent_pale.inc"
#include "crescent_gold.inc"
#include "crescent_done.inc"
#include "crescent_dark.inc"
camera { orthographic location <0, 40, -26> look_at <0, 0.5, 0.5> right x*60 up y*18 }
plane { y, 0 texture { Linen } }
object { crescent_pale Crust("crescent_pale.png", 0.1) rotate y*4 translate <-22.8, 0, 0> }
object { crescent_gold Crust("crescent_gold.png", 0.18) rotate y*-3 translate <-7.6, 0, 0> }
object { crescent_done Crust("crescent_done.png", 0.2) rotate y*2 translate <7.6, 0, 0> }
object { crescent_dark Crust("crescent_dark.png", 0.14) rotate y*-2 translate <22.8, 0, 0> }
