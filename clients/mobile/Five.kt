// The five lines of clients/README.md against a live server, and what becomes of a question without an answer.
import ductrun.apis.BankApi
import ductrun.apis.BatchesApi
import ductrun.apis.FillApi
import ductrun.apis.TablesApi
import ductrun.infrastructure.ApiClient
import ductrun.infrastructure.ProblemException
import ductrun.models.*

fun main(arguments: Array<String>) {
    val ductrun = ApiClient(arguments[0])
    val bank = SpacersRequest(length = Length(LengthUnit.FT, 300.0), tiers = listOf(3, 3, 2))
    val answer = BankApi(ductrun).calculateSpacers(bank, units = UnitSystem.METRIC)
    println("${answer.result.stationCount} ${answer.result.actualSpacing?.unit}")

    val cable = Cable.ListedWrapper(ListedCable(insulation = Insulation.THHN, size = ConductorSize.AWG_4_0))
    val conduit = Conduit.ListedWrapper(ListedConduit(tradeSize = TradeSize.SIZE_2, type = ConduitType.PVC_SCHEDULE_40))
    val request = FillRequest(cables = listOf(CableLine(cable, 5)), conduit = conduit)
    val fill = FillApi(ductrun).calculateFill(request, request = RequestBack.COMPLETED)
    println("${fill.verdict} ${(fill.request!!.conduit as Conduit.ListedWrapper).value.tradeSize}")

    try {
        BankApi(ductrun).calculateSpacers(bank.copy(length = Length(LengthUnit.FT, -1.0)))
    } catch (fault: ProblemException) {
        println("${fault.problem.status} ${fault.faults.first().pointer} ${fault.headers["X-Request-ID"] == fault.problem.requestId}")
    }
    val item = BatchItem.SpacersWrapper(SpacersItem(id = "a", request = bank))
    val batch = BatchesApi(ductrun).calculateBatch(BatchRequest(listOf(item)))
    val first = batch.items.first() as BatchItemAnswer.AnswerWrapper
    println((first.value as ItemAnswer.SpacersWrapper).value.answer.result.stationCount)
    println(TablesApi(ductrun).listConduits(type = ConduitType.EMT, tradeSize = TradeSize.SIZE_2).rows.first().metricDesignator)
}
