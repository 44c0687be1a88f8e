//! Minutes of a plan and moments of the day.
//!
//! A plan counts minutes of real time from its first moment, so that a hold over a night
//! in which the clocks change lasts as long as it lasts.

use jiff::civil::DateTime;
use jiff::tz::TimeZone;
use jiff::{SignedDuration, ZonedDateTime};

/// From minutes to local times and back.
#[derive(Clone, Debug)]
pub struct Clock {
    start: ZonedDateTime,
    /// The zone's name; `None` where times are only local.
    zone: Option<String>,
}

impl Clock {
    /// A clock whose minute 0 is `start`, in the zone of this IANA name. Without a zone no
    /// clock changes.
    pub fn new(start: DateTime, zone: Option<&str>) -> Option<Self> {
        let named =
            zone.and_then(|name| jiff::tz::TimeZoneDatabase::bundled().get(name).ok());
        let zone = named.as_ref().and(zone).map(str::to_owned);
        let start = start.to_zoned_datetime(named.unwrap_or(TimeZone::UTC)).ok()?;
        Some(Self { start, zone })
    }

    /// The zone's name.
    pub fn zone(&self) -> Option<&str> {
        self.zone.as_deref()
    }

    /// The minute of a local time; `None` for a time that clocks which go forward leave out.
    pub fn minute(&self, at: DateTime) -> Option<i32> {
        self.minute_after(at).filter(|minute| self.local(*minute) == at)
    }

    /// The minute of a local time; of one that clocks leave out, as much later as they go
    /// forward.
    pub fn minute_after(&self, at: DateTime) -> Option<i32> {
        let at = at.to_zoned_datetime(self.start.time_zone().clone()).ok()?;
        i32::try_from(at.timestamp().duration_since(self.start.timestamp()).as_mins())
            .ok()
    }

    /// A minute as a moment.
    pub fn moment(&self, minute: i32) -> ZonedDateTime {
        let by = SignedDuration::from_mins(i64::from(minute));
        self.start.checked_add(by).unwrap_or_else(|_| self.start.clone())
    }

    /// A minute as a local time.
    pub fn local(&self, minute: i32) -> DateTime {
        self.moment(minute).datetime()
    }

    /// `2027-03-02T18:05`.
    pub fn stamp(&self, minute: i32) -> String {
        self.local(minute).strftime("%Y-%m-%dT%H:%M").to_string()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Clocks in Dublin went forward on 2027-03-28 at 01:00 UTC (IANA tz database,
    /// `europe`): that night is an hour shorter.
    #[test]
    fn the_night_of_the_change_is_an_hour_shorter() {
        let start = jiff::civil::date(2027, 3, 27).at(20, 0, 0, 0);
        let clock = Clock::new(start, Some("Europe/Dublin")).expect("a clock");
        let morning = jiff::civil::date(2027, 3, 28).at(8, 0, 0, 0);
        assert_eq!(clock.minute(morning), Some(11 * 60));
        assert_eq!(clock.local(11 * 60), morning);
        // 01:30 is never that night.
        let never = jiff::civil::date(2027, 3, 28).at(1, 30, 0, 0);
        assert_eq!(clock.minute(never), None);
        assert_eq!(clock.minute_after(never).map(|at| clock.local(at).hour()), Some(2));
        let plain = Clock::new(start, None).expect("a clock");
        assert_eq!(plain.minute(morning), Some(12 * 60));
    }
}
