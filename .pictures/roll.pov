#include "common.inc"
#include "rolled.inc"
#include "rest.inc"
camera { location <4.5, 20, -16> look_at <0.4, 0, 6.2> angle 40 right x*image_width/image_height }
plane { y, 0 texture { Board } }
object { rest Matt("rest.png") }
object { rolled Matt("rolled.png") translate <0, 0, -94 + 0.25> }
