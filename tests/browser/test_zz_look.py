import pytest
from tests.browser.test_sums import give, show, done, typed
from tests.browser.test_sums import *  # noqa
@pytest.mark.parametrize("lang", ["en","es","fr"])
def test_look(new_phone, lang):
    phone = new_phone()
    if lang != "en":
        phone.page.evaluate("""async (l) => { const m = await import('/js/messages/index.js'); await m.setLanguage(l); }""", lang)
    give(phone, "actual_yield", "milk_kg", "30"); give(phone, "actual_yield", "cheese_kg", "50"); give(phone, "actual_yield", "cheese_moisture_frac", "40")
    show(phone, "sum/actual_yield"); phone.page.wait_for_timeout(800)
    phone.page.screenshot(path=f"/tmp/look-{lang}-yield.png", full_page=True)
    print(phone.page.locator(".sum-answer").inner_text())
    give(phone, "brine_make_up", "volume_l", "100"); give(phone, "brine_make_up", "brine_salt_frac", "26.5"); give(phone, "brine_make_up", "brine_temp_c", "10")
    show(phone, "sum/brine_make_up"); phone.page.wait_for_timeout(800)
    print(phone.page.locator(".sum-answer").inner_text())
    show(phone, "sum/wash_water"); 
    for n,v in (("vat_kg","70"),("vat_temp_c","31"),("target_temp_c","37"),("water_temp_c","30")): give(phone, "wash_water", n, v)
    show(phone, "sum/wash_water"); phone.page.wait_for_timeout(800)
    print(phone.page.locator(".sum-answer").inner_text())
    show(phone, "recipes"); phone.page.wait_for_timeout(1200)
    show(phone, "recipe/washed-wheel"); phone.page.wait_for_timeout(1500)
    phone.page.screenshot(path=f"/tmp/look-{lang}-recipe.png", full_page=True)
    print(phone.page.locator("main").inner_text()[-2500:])
