### Dates, times, ranges and lists. { $name } in a word is filled in by the program.

## Dates, times, lists

weekday-1 = Monday
weekday-2 = Tuesday
weekday-3 = Wednesday
weekday-4 = Thursday
weekday-5 = Friday
weekday-6 = Saturday
weekday-7 = Sunday
month-1 = January
month-2 = February
month-3 = March
month-4 = April
month-5 = May
month-6 = June
month-7 = July
month-8 = August
month-9 = September
month-10 = October
month-11 = November
month-12 = December
date = { $day } { $month } { $year }
date-weekday = { $weekday } { $day } { $month } { $year }
clock = { $hour }:{ $minute }
range = { $from }–{ $to }
list-comma = { ", " }
list-semicolon = { "; " }
list-colon = { ": " }
sentence-space = { " " }
sentence-stop = .
session = { $date }, { $from }–{ $to }

## Small counts

count-2 = two
count-3 = three
count-4 = four
count-5 = five
count-6 = six
count-7 = seven
count-8 = eight
count-9 = nine
count-10 = ten
count-11 = eleven
count-12 = twelve

## Values of ticket rows

count-and-beaten = { $pieces } and { $weight } of beaten { $name }
count-beaten = { $weight } of beaten { $name }
